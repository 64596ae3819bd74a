package hornbook.rulebook.network;

import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.fact.Caution;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Conclusion;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reason;
import hornbook.rulebook.fact.Referral;
import java.util.ArrayList;
import java.util.List;
import org.drools.model.Drools;
import org.drools.model.functions.BlockN;

/**
 * What a rule does when it fires: its conclusion, with the facts cited, goes to the list of what
 * was concluded. A finding is inserted too, since other rules ask for it.
 */
final class Conclude implements BlockN {
  private static final long serialVersionUID = 1L;

  private final String rule;
  private final transient RuleConclusion outcome;

  /** For every fact cited: the place of its pattern, or the limit itself. */
  private final transient List<Object> cited;

  Conclude(String rule, RuleConclusion outcome, List<Object> cited) {
    this.rule = rule;
    this.outcome = outcome;
    this.cited = cited;
  }

  /** Takes the session if the rule makes a finding, the facts matched, and the list. */
  @Override
  public void execute(Object... given) {
    boolean finds = outcome instanceof RuleConclusion.Finds;
    List<CitedFact> because = new ArrayList<>(cited.size());
    for (Object one : cited) {
      because.add(
          one instanceof Limit limit ? limit : (CitedFact) given[(int) one + (finds ? 1 : 0)]);
    }
    Conclusion conclusion = conclusion(because);
    @SuppressWarnings("unchecked")
    List<Concluded> all = (List<Concluded>) given[given.length - 1];
    all.add(new Concluded(rule, conclusion));
    if (finds) {
      ((Drools) given[0]).insert(conclusion);
    }
  }

  private Conclusion conclusion(List<CitedFact> because) {
    if (outcome instanceof RuleConclusion.Finds finds) {
      return new Finding(finds.finding(), because);
    }
    if (outcome instanceof RuleConclusion.Refers refers) {
      return new Referral(refers.urgency(), refers.id(), because);
    }
    if (outcome instanceof RuleConclusion.Reasons reasons) {
      return new Reason(reasons.bearing(), reasons.subjects(), because);
    }
    return new Caution(((RuleConclusion.Cautions) outcome).id(), because);
  }
}
