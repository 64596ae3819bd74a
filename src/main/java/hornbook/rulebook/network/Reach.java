package hornbook.rulebook.network;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.RowFact;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which rules certain facts could fire: those of which every condition is about some fact that is
 * there. Whether a number meets a limit is not looked at: that is the engine's. To leave the others
 * out is sound because every condition asks for something that is there, and none for something
 * that is not. Rules are told apart as objects: a cold start takes forty milliseconds to learn how
 * to compare such a record by what it holds.
 */
final class Reach {
  private final Map<String, List<String>> words = new HashMap<>();
  private final Set<String> numbers = new HashSet<>();
  private final List<RowFact> rows = new ArrayList<>();
  private final Set<String> findings = new HashSet<>();

  private Reach(Collection<? extends CitedFact> facts) {
    for (CitedFact fact : facts) {
      if (fact instanceof Seen seen) {
        words.computeIfAbsent(seen.what(), what -> new ArrayList<>(2)).add(seen.word());
      } else if (fact instanceof Reading reading) {
        numbers.add(reading.what());
      } else if (fact instanceof RowFact row) {
        rows.add(row);
      }
    }
  }

  /** The rules within reach of these facts, in the order given. */
  static List<RuleEntry> of(Collection<RuleEntry> rules, Collection<? extends CitedFact> facts) {
    Reach reach = new Reach(facts);
    Set<RuleEntry> within = Collections.newSetFromMap(new IdentityHashMap<>());
    int before;
    do {
      before = reach.findings.size();
      for (RuleEntry rule : rules) {
        if (!within.contains(rule) && reach.all(rule)) {
          within.add(rule);
          if (rule.outcome() instanceof RuleConclusion.Finds finds) {
            reach.findings.add(finds.finding());
          }
        }
      }
    } while (reach.findings.size() > before);
    List<RuleEntry> ordered = new ArrayList<>(within.size());
    for (RuleEntry rule : rules) {
      if (within.contains(rule)) {
        ordered.add(rule);
      }
    }
    return ordered;
  }

  private boolean all(RuleEntry rule) {
    for (Condition condition : rule.conditions()) {
      if (!some(condition)) {
        return false;
      }
    }
    return true;
  }

  private boolean some(Condition condition) {
    if (condition instanceof Condition.OfReading reading) {
      return numbers.contains(reading.what());
    }
    if (condition instanceof Condition.OfSeen seen) {
      List<String> seenHere = words.get(seen.what());
      return seenHere != null && seenHere.stream().anyMatch(seen.word()::passes);
    }
    if (condition instanceof Condition.OfFinding finding) {
      return findings.contains(finding.what());
    }
    if (condition instanceof Condition.OfCrack crack) {
      return row(Crack.class, crack.words());
    }
    return !(condition instanceof Condition.OfStretch stretch)
        || row(Stretch.class, stretch.words());
  }

  private boolean row(Class<? extends RowFact> kind, Map<String, WordTest> tests) {
    return rows.stream()
        .anyMatch(row -> kind.isInstance(row) && WordsTest.all(tests.entrySet(), row));
  }
}
