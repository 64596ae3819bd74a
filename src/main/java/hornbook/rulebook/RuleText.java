package hornbook.rulebook;

import java.util.List;

/**
 * What a rule says to people, with holes named after its variables. {@code meanwhile} belongs to
 * referrals; {@code techniques} to cautions, empty for a caution that always holds.
 *
 * @param dissents the rules whose opposite this one says on purpose: another author's view
 */
public record RuleText(
    String says,
    String meanwhile,
    List<String> sources,
    List<String> techniques,
    List<String> dissents) {}
