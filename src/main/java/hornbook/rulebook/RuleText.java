package hornbook.rulebook;

import java.util.List;

/**
 * What a rule says to people, with holes named after its variables. {@code meanwhile} belongs to
 * referrals; {@code techniques} to cautions, empty for a caution that always holds.
 */
public record RuleText(
    String says, String meanwhile, List<String> sources, List<String> techniques) {}
