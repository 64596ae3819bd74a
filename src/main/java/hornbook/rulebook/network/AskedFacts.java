package hornbook.rulebook.network;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.RowFact;
import hornbook.rulebook.fact.Seen;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The facts some rule asks for: the others would only cost the engine time. Of rows that say the
 * same in every word one is enough, the first by its path: no rule could tell them apart.
 */
final class AskedFacts {
  private final Map<String, List<WordTest>> words = new HashMap<>();
  private final Set<String> numbers = new HashSet<>();
  private final List<List<Map.Entry<String, WordTest>>> cracks = new ArrayList<>();
  private final List<List<Map.Entry<String, WordTest>>> stretches = new ArrayList<>();

  AskedFacts(Iterable<RuleEntry> rules) {
    for (RuleEntry rule : rules) {
      rule.conditions().forEach(this::add);
    }
  }

  private void add(Condition condition) {
    if (condition instanceof Condition.OfReading reading) {
      numbers.add(reading.what());
    } else if (condition instanceof Condition.OfSeen seen) {
      words.computeIfAbsent(seen.what(), what -> new ArrayList<>()).add(seen.word());
    } else if (condition instanceof Condition.OfCrack crack) {
      cracks.add(List.copyOf(crack.words().entrySet()));
    } else if (condition instanceof Condition.OfStretch stretch) {
      stretches.add(List.copyOf(stretch.words().entrySet()));
    }
  }

  /** Those of the facts that some rule asks for. */
  List<CitedFact> among(Collection<? extends CitedFact> facts) {
    List<CitedFact> asked = new ArrayList<>(facts.size());
    Map<String, RowFact> rows = new HashMap<>();
    for (CitedFact fact : facts) {
      if (fact instanceof Seen seen) {
        if (passesAny(words.get(seen.what()), seen.word())) {
          asked.add(seen);
        }
      } else if (fact instanceof Reading reading) {
        if (numbers.contains(reading.what())) {
          asked.add(reading);
        }
      } else if (fact instanceof RowFact row
          && anyPasses(row instanceof Crack ? cracks : stretches, row)) {
        rows.merge(words(row), row, AskedFacts::first);
      }
    }
    asked.addAll(rows.values());
    return asked;
  }

  private static boolean passesAny(List<WordTest> tests, String word) {
    if (tests != null) {
      for (WordTest test : tests) {
        if (test.passes(word)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean anyPasses(List<List<Map.Entry<String, WordTest>>> all, RowFact row) {
    for (List<Map.Entry<String, WordTest>> tests : all) {
      if (WordsTest.all(tests, row)) {
        return true;
      }
    }
    return false;
  }

  private static String words(RowFact row) {
    StringBuilder joined = new StringBuilder(row instanceof Crack ? "crack" : "stretch");
    for (String name : row.names()) {
      joined.append(' ').append(row.word(name));
    }
    return joined.toString();
  }

  private static RowFact first(RowFact one, RowFact other) {
    return one.field().compareTo(other.field()) <= 0 ? one : other;
  }
}
