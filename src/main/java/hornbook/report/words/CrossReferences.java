package hornbook.report.words;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Limit;
import java.util.List;
import java.util.function.Predicate;

/** What in a rule base makes use of what. */
public final class CrossReferences {
  private final Rulebook book;

  public CrossReferences(Rulebook book) {
    this.book = book;
  }

  /** Every entry of a limit: there may be one for each limb and age. */
  public List<Limit> limits(String id) {
    return limits(limit -> limit.id().equals(id));
  }

  /** The weakest ground among a rule and every entry of the limits it binds. */
  public Basis weakest(RuleEntry rule) {
    return rule.weakest(rule.limits().flatMap(id -> limits(id).stream()));
  }

  public List<Limit> limitsFrom(String source) {
    return limits(limit -> limit.source().equals(source));
  }

  /** Limits of another source whose place in it names this one as well. */
  public List<Limit> limitsAlsoFrom(String source) {
    return limits(
        limit -> limit.locator().contains(source) && book.worksNamed(limit).contains(source));
  }

  public List<Limit> limitsDisputedBy(String source) {
    return limits(limit -> limit.disputes().stream().anyMatch(one -> one.source().equals(source)));
  }

  public List<RuleEntry> heldTo(String limit) {
    return rules(rule -> rule.limits().anyMatch(limit::equals));
  }

  public List<RuleEntry> finding(String finding) {
    return rules(
        rule ->
            rule.outcome() instanceof RuleConclusion.Finds finds
                && finds.finding().equals(finding));
  }

  public List<RuleEntry> buildingOn(String finding) {
    Predicate<Condition> builds =
        condition -> condition instanceof Condition.OfFinding found && found.what().equals(finding);
    return rules(rule -> rule.conditions().stream().anyMatch(builds));
  }

  public List<RuleEntry> citing(String source) {
    return rules(rule -> rule.text().sources().contains(source));
  }

  public List<RuleEntry> bearing(Bearing bearing, String subject) {
    return rules(
        rule ->
            rule.outcome() instanceof RuleConclusion.Reasons reasons
                && reasons.bearing() == bearing
                && reasons.subjects().contains(subject));
  }

  private List<RuleEntry> rules(Predicate<RuleEntry> which) {
    return book.rules().values().stream().filter(which).toList();
  }

  private List<Limit> limits(Predicate<Limit> which) {
    return book.limits().stream().filter(which).toList();
  }
}
