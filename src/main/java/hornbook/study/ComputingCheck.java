package hornbook.study;

import hornbook.advice.ComputingLimits;
import hornbook.rulebook.RuleFault;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether the computing of every kind of foot finds the limits it takes. */
final class ComputingCheck {
  private ComputingCheck() {}

  static List<RuleFault> faults(Rulebook book) {
    List<RuleFault> faults = new ArrayList<>();
    for (Limit.Limbs limbs : Limit.Limbs.values()) {
      for (Limit.Age age : Limit.Age.values()) {
        Map<String, Limit> holding = new LinkedHashMap<>();
        for (Limit limit : book.limits()) {
          if ((limit.limbs() == null || limit.limbs() == limbs)
              && (limit.age() == null || limit.age() == age)) {
            holding.put(limit.id(), limit);
          }
        }
        for (String id : ComputingLimits.missing(holding)) {
          faults.add(
              new RuleFault(
                  "computing/limits.yaml",
                  0,
                  id,
                  "the computing of a "
                      + (limbs == Limit.Limbs.FORE ? "fore" : "hind")
                      + " foot "
                      + (age == Limit.Age.ADULT ? "of a grown horse" : "of a foal")
                      + " takes this limit, and there is none",
                  "write it back, with uses: computing"));
        }
      }
    }
    return faults;
  }
}
