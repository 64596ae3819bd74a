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
      more = false;
      for (FiredRule firing : firings) {
        if (firing.conclusion() instanceof Finding finding) {
          Basis own = under(book.rules().get(firing.rule()), finding.because());
          Basis before = found.get(finding.what());
          Basis weakest = before == null ? own : before.weaker(own);
          if (weakest != before) {
            found.put(finding.what(), weakest);
            more = true;
          }
        }
      }
    }
  }

  public Basis under(RuleEntry rule, List<CitedFact> because) {
    Basis weakest = rule.basis();
    for (CitedFact fact : because) {
      if (fact instanceof Limit limit) {
        weakest = weakest.weaker(limit.basis());
      } else if (fact instanceof Finding finding) {
        Basis below = found.get(finding.what());
        weakest = below == null ? weakest : weakest.weaker(below);
      }
    }
    return weakest;
  }
}
