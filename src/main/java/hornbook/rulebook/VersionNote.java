package hornbook.rulebook;

import java.util.List;

/**
 * What a version of a rule base changed, for people who do not read rules.
 *
 * @param date year-month-day
 * @param rules ids of the rules meant; none where it is all of them
 * @param limits ids of the limits meant
 */
public record VersionNote(
    String version, String date, List<String> says, List<String> rules, List<String> limits) {}
