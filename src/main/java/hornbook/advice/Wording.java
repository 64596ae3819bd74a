package hornbook.advice;

import hornbook.rulebook.Outcome;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Cited;
import hornbook.rulebook.fact.Limit;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Joins a rule's text with the facts it fired on, and adds up the works it stands on. */
public final class Wording {
  private Wording() {}

  /** The sentence of a rule, with the facts it fired on. */
  public static Says says(RuleEntry rule, List<Cited> because) {
    return new Says(rule.text().says(), holes(rule.outcome(), because));
  }

  /** What to do until the vet comes, or null. */
  static Says meanwhile(RuleEntry rule, List<Cited> because) {
    return rule.text().meanwhile() == null
        ? null
        : new Says(rule.text().meanwhile(), holes(rule.outcome(), because));
  }

  /** The works the rule and the limits it cites rest on. */
  static List<String> sources(RuleEntry rule, List<Cited> because) {
    Set<String> keys = new LinkedHashSet<>();
    for (Cited fact : because) {
      if (fact instanceof Limit limit) {
        keys.add(limit.source());
      }
    }
    keys.addAll(rule.text().sources());
    return List.copyOf(keys);
  }

  /** The facts by the names the rule gave them: a conclusion cites them in the rule's own order. */
  private static Map<String, Cited> holes(Outcome outcome, List<Cited> because) {
    Map<String, Cited> holes = new LinkedHashMap<>();
    for (int at = 0; at < because.size(); at++) {
      holes.put(outcome.cites().get(at), because.get(at));
    }
    return holes;
  }
}
