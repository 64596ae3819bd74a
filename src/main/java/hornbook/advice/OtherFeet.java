package hornbook.advice;

import hornbook.assessment.Assessment;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;

/**
 * What the other feet of a horse hold back on one of them: the calls for the vet that reach beyond
 * their own foot, told from the table of rules.
 */
final class OtherFeet {
  private final RuleTable farReaching;

  OtherFeet(Rulebook book) {
    farReaching = RuleTable.farReaching(book);
  }

  /** The calls on each foot that reach others, given all its sheets in the order of the file. */
  List<List<RuleEntry>> calls(List<FactSheet> sheets) {
    return sheets.stream()
        .map(sheet -> farReaching.rules(farReaching.fired(farReaching.met(sheet))))
        .map(OtherFeet::farReaching)
        .toList();
  }

  private static List<RuleEntry> farReaching(List<RuleEntry> fired) {
    return fired.stream().filter(RuleTable::reachesOthers).toList();
  }

  /** What the calls on the other feet hold back on the foot at this place. */
  static List<Held> on(int foot, List<List<RuleEntry>> calls, Assessment assessment) {
    List<Held> held = new ArrayList<>();
    for (int other = 0; other < calls.size(); other++) {
      for (RuleEntry rule : calls.get(other)) {
        var from = assessment.feet().get(other).limb();
        var to = assessment.feet().get(foot).limb();
        if (rule.text().reserves().extent().reaches(from, to)) {
          held.add(new Held(rule, from));
        }
      }
    }
    return List.copyOf(held);
  }
}
