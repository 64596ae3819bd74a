package hornbook.advice;

import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.CitedFact;
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
  public static Statement says(RuleEntry rule, List<CitedFact> because) {
    return new Statement(rule.text().says(), holes(rule.outcome(), because));
  }

  /** What to do until the vet comes, or null. */
  public static Statement meanwhile(RuleEntry rule, List<CitedFact> because) {
    return rule.text().meanwhile() == null
        ? null
        : new Statement(rule.text().meanwhile(), holes(rule.outcome(), because));
  }

  /** The works the rule and the limits it cites rest on. */
  public static List<String> sources(RuleEntry rule, List<CitedFact> because) {
    Set<String> keys = new LinkedHashSet<>();
    for (CitedFact fact : because) {
      if (fact instanceof Limit limit) {
        keys.add(limit.source());
      }
    }
    keys.addAll(rule.text().sources());
    return List.copyOf(keys);
  }

  /** The facts by the names the rule gave them: a conclusion cites them in the rule's own order. */
  private static Map<String, CitedFact> holes(RuleConclusion outcome, List<CitedFact> because) {
    Map<String, CitedFact> holes = new LinkedHashMap<>(2 * because.size());
    for (int at = 0; at < because.size(); at++) {
      holes.put(outcome.cites().get(at), because.get(at));
    }
    return holes;
  }
}
