package hornbook.rulebook;

import java.util.List;

/**
 * What a version of a rule base changed, for people who do not read rules.
 *
 * @param date year-month-day
 * @param rules ids of the rules meant; none in the oldest version, where it is all of them
 * @param limits ids of the limits meant
 * @param all how many rules the oldest version had; 0 where that was not written down
 */
public record VersionNote(
    String version,
    String date,
    List<String> says,
    List<String> rules,
    List<String> limits,
    int all) {}
