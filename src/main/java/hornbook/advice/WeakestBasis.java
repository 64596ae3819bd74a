package hornbook.advice;

import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How good the ground is under what fired on a foot: the weakest among that of the rule, of every
 * limit it rests on, and of the rules that made the findings it builds on, however far down.
 */
public final class WeakestBasis {
  private final Map<String, Basis> found = new HashMap<>();

  public WeakestBasis(Rulebook book, List<FiredRule> firings) {
    for (boolean more = true; more; ) {
      Map<String, Basis> before = Map.copyOf(found);
      for (FiredRule firing : firings) {
        if (firing.conclusion() instanceof Finding finding) {
          Basis own = under(book.rules().get(firing.rule()), finding.because());
          found.merge(finding.what(), own, Basis::weaker);
        }
      }
      more = !found.equals(before);
    }
  }

  public Basis under(RuleEntry rule, List<CitedFact> because) {
    Basis weakest =
        rule.weakest(because.stream().filter(Limit.class::isInstance).map(Limit.class::cast));
    for (CitedFact fact : because) {
      if (fact instanceof Finding finding && found.containsKey(finding.what())) {
        weakest = weakest.weaker(found.get(finding.what()));
      }
    }
    return weakest;
  }
}
