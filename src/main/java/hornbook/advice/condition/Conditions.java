package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.RowFact;
import hornbook.rulebook.fact.Seen;
import java.util.List;
import java.util.Map;

/**
 * Whether a condition holds on a foot: the one reading of conditions beside the engine's own, which
 * everything uses that explains, compares, asks or tries. A condition holds where the engine would
 * match it; it fails only where nothing still unknown could make it hold.
 */
final class Conditions {
  private Conditions() {}

  /**
   * A condition that asks the foot itself; whether a finding holds is a matter of its rules.
   *
   * @param limit the id of the limit a reading is compared with; null for other conditions
   */
  static Truth of(Condition condition, String limit, FactSheet sheet) {
    if (condition instanceof Condition.OfReading asked) {
      return of(asked, sheet.readings().get(asked.what()), sheet.limits().get(limit));
    }
    if (condition instanceof Condition.OfSeen asked) {
      return of(asked.word(), sheet.seen().get(asked.what()));
    }
    if (condition instanceof Condition.OfCrack asked) {
      return some(asked.words(), sheet.cracks());
    }
    if (condition instanceof Condition.OfStretch asked) {
      return some(asked.words(), sheet.wall());
    }
    return Truth.of(sheet.limits().containsKey(((Condition.OfLimit) condition).id()));
  }

  /** Without a limit for such a foot the rule is not about it; without a reading it is open. */
  static Truth of(Condition.OfReading asked, Reading reading, Limit limit) {
    if (limit == null) {
      return Truth.FALSE;
    }
    Truth satisfies = satisfies(reading, limit);
    return asked.satisfies() ? satisfies : satisfies.not();
  }

  /** Whether a reading satisfies a limit; unknown where it may lie on either side. */
  static Truth satisfies(Reading reading, Limit limit) {
    if (reading == null) {
      return Truth.UNKNOWN;
    }
    return reading.satisfies(limit)
        ? Truth.TRUE
        : reading.misses(limit) ? Truth.FALSE : Truth.UNKNOWN;
  }

  private static Truth of(WordTest asked, List<Seen> seen) {
    if (seen == null) {
      return Truth.UNKNOWN;
    }
    for (Seen one : seen) {
      if (asked.passes(one.word())) {
        return Truth.TRUE;
      }
    }
    return Truth.FALSE;
  }

  private static Truth some(Map<String, WordTest> asked, List<? extends RowFact> rows) {
    if (rows == null) {
      return Truth.UNKNOWN;
    }
    Truth some = Truth.FALSE;
    for (RowFact row : rows) {
      some = some.or(of(asked, row));
      if (some == Truth.TRUE) {
        return some;
      }
    }
    return some;
  }

  /** Whether one row passes every test on its words. */
  static Truth of(Map<String, WordTest> asked, RowFact row) {
    Truth all = Truth.TRUE;
    for (Map.Entry<String, WordTest> test : asked.entrySet()) {
      String word = row.word(test.getKey());
      if (word == null) {
        all = Truth.UNKNOWN;
      } else if (!test.getValue().passes(word)) {
        return Truth.FALSE;
      }
    }
    return all;
  }
}
