package hornbook.study.rulecheck;

import hornbook.advice.fact.ComputingLimits;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.RuleFault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Whether the computing of every kind of foot finds the limits it takes. */
final class ComputingCheck {
  private static final int KINDS = Limit.Limbs.values().length * Limit.Age.values().length;

  private ComputingCheck() {}

  static List<RuleFault> faults(Rulebook book) {
    Map<String, List<String>> lacking = new TreeMap<>();
    for (Limit.Limbs limbs : Limit.Limbs.values()) {
      for (Limit.Age age : Limit.Age.values()) {
        for (String id : ComputingLimits.missing(holding(book, limbs, age))) {
          lacking.computeIfAbsent(id, key -> new ArrayList<>()).add(foot(limbs, age));
        }
      }
    }
    List<RuleFault> faults = new ArrayList<>();
    lacking.forEach(
        (id, feet) ->
            faults.add(
                new RuleFault(
                    "computing/limits.yaml",
                    0,
                    id,
                    "the computing of "
                        + (feet.size() == KINDS ? "any foot" : String.join(" and ", feet))
                        + " takes this limit, and there is none",
                    "write it, with uses: computing")));
    if (faults.isEmpty()) {
      fit(book, faults);
    }
    return faults;
  }

  /** Numbers that the computing refuses: shares above the whole, parts of the edge out of order. */
  private static void fit(Rulebook book, List<RuleFault> faults) {
    for (Limit.Limbs limbs : Limit.Limbs.values()) {
      for (Limit.Age age : Limit.Age.values()) {
        try {
          ComputingLimits.of(holding(book, limbs, age));
        } catch (IllegalArgumentException refused) {
          faults.add(
              new RuleFault(
                  "computing/limits.yaml",
                  0,
                  "",
                  "the computing of "
                      + foot(limbs, age)
                      + " cannot use its limits: "
                      + refused.getMessage(),
                  "set those of uses: computing back to what a foot can have"));
        }
      }
    }
  }

  private static Map<String, Limit> holding(Rulebook book, Limit.Limbs limbs, Limit.Age age) {
    Map<String, Limit> holding = new LinkedHashMap<>();
    for (Limit limit : book.limits()) {
      if ((limit.limbs() == null || limit.limbs() == limbs)
          && (limit.age() == null || limit.age() == age)) {
        holding.put(limit.id(), limit);
      }
    }
    return holding;
  }

  private static String foot(Limit.Limbs limbs, Limit.Age age) {
    String foot = limbs == Limit.Limbs.FORE ? "a fore foot" : "a hind foot";
    return foot + (age == Limit.Age.ADULT ? " of a grown horse" : " of a foal");
  }
}
