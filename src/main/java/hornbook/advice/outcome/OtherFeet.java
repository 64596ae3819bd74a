package hornbook.advice.outcome;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Held;
import hornbook.assessment.Assessment;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;

/**
 * What the other feet of a horse hold back on one of them: the calls for the vet that reach beyond
 * their own foot, told from the table of rules.
 */
public final class OtherFeet {
  private final RuleTable farReaching;

  public OtherFeet(Rulebook book) {
    farReaching = RuleTable.farReaching(book);
  }

  /** The sheets of all feet of one horse, each with what the others hold back on it. */
  public List<FactSheet> together(Assessment assessment, List<FactSheet> sheets) {
    List<List<RuleEntry>> calls = calls(sheets);
    List<FactSheet> together = new ArrayList<>();
    for (int index = 0; index < sheets.size(); index++) {
      together.add(sheets.get(index).holding(on(index, calls, assessment)));
    }
    return together;
  }

  /** The calls on each foot that reach others, given all its sheets in the order of the file. */
  public List<List<RuleEntry>> calls(List<FactSheet> sheets) {
    return sheets.stream()
        .map(sheet -> farReaching.rules(farReaching.fired(farReaching.met(sheet))))
        .map(OtherFeet::farReaching)
        .toList();
  }

  private static List<RuleEntry> farReaching(List<RuleEntry> fired) {
    return fired.stream().filter(RuleTable::reachesOthers).toList();
  }

  /** What the calls on the other feet hold back on the foot at this place. */
  public static List<Held> on(int foot, List<List<RuleEntry>> calls, Assessment assessment) {
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
