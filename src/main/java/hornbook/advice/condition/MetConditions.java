package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.rulebook.Condition;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import java.util.List;
import java.util.Map;

/** Which conditions certainly hold on one foot; what is not known holds none. */
public final class MetConditions {
  private final FactSheet sheet;
  private final List<Map<String, String>> cracks;
  private final List<Map<String, String>> wall;

  public MetConditions(FactSheet sheet) {
    this.sheet = sheet;
    cracks =
        sheet.cracks() == null ? List.of() : sheet.cracks().stream().map(Appraisal::words).toList();
    wall = sheet.wall() == null ? List.of() : sheet.wall().stream().map(Appraisal::words).toList();
  }

  /**
   * @param limit the id of the limit a reading is held against; null for other conditions
   */
  public boolean holds(Condition condition, String limit) {
    if (condition instanceof Condition.OfLimit of) {
      return sheet.limits().containsKey(of.id());
    }
    if (condition instanceof Condition.OfReading of) {
      return holds(of, sheet.limits().get(limit));
    }
    if (condition instanceof Condition.OfCrack of) {
      return any(cracks, of.words());
    }
    if (condition instanceof Condition.OfStretch of) {
      return any(wall, of.words());
    }
    Condition.OfSeen of = (Condition.OfSeen) condition;
    for (Seen seen : sheet.seen().getOrDefault(of.what(), List.of())) {
      if (of.word().passes(seen.word())) {
        return true;
      }
    }
    return false;
  }

  private boolean holds(Condition.OfReading of, Limit limit) {
    Reading reading = sheet.readings().get(of.what());
    if (limit == null || reading == null) {
      return false;
    }
    return of.satisfies() ? reading.satisfies(limit) : reading.misses(limit);
  }

  private static boolean any(List<Map<String, String>> rows, Map<String, WordTest> tests) {
    for (Map<String, String> row : rows) {
      if (all(row, tests)) {
        return true;
      }
    }
    return false;
  }

  private static boolean all(Map<String, String> row, Map<String, WordTest> tests) {
    for (Map.Entry<String, WordTest> test : tests.entrySet()) {
      String word = row.get(test.getKey());
      if (word == null || !test.getValue().passes(word)) {
        return false;
      }
    }
    return true;
  }
}
