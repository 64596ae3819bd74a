package hornbook.rulebook;

import hornbook.rulebook.reserve.Reserves;
import java.util.List;

/**
 * What a rule says to people, with holes named after its variables. {@code meanwhile} belongs to
 * referrals; {@code techniques} to cautions, empty for a caution that always holds.
 *
 * @param reserves what a referral holds back, its urgency counted in; nothing for other rules
 * @param dissents the rules whose opposite this one says on purpose: another author's view
 * @param does what the rule tells the farrier to do
 * @param against what the rule tells the farrier not to do
 * @param shown where it is told
 */
public record RuleText(
    String says,
    String meanwhile,
    List<String> sources,
    List<String> techniques,
    List<String> dissents,
    Reserves reserves,
    List<String> does,
    List<String> against,
    Shown shown) {
  /** The text of a rule that has none. */
  public static final RuleText NONE =
      new RuleText(
          "",
          null,
          List.of(),
          List.of(),
          List.of(),
          Reserves.NOTHING,
          List.of(),
          List.of(),
          Shown.ALWAYS);

  /** The same text with other things held back. */
  public RuleText holdingBack(Reserves other) {
    return new RuleText(
        says, meanwhile, sources, techniques, dissents, other, does, against, shown);
  }
}
