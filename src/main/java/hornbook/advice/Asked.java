package hornbook.advice;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that the rules of a rule base ask of a foot. They ask words, and whether a number lies on one
 * side of a limit or the other; two feet alike in every answer fire the same rules.
 */
final class Asked {
  private final Map<String, Set<String>> limits = new LinkedHashMap<>();

  Asked(Rulebook book) {
    for (RuleEntry rule : book.rules().values()) {
      for (Condition condition : rule.conditions()) {
        if (condition instanceof Condition.OfReading reading) {
          limits
              .computeIfAbsent(reading.what(), what -> new LinkedHashSet<>())
              .add(rule.limitBoundTo(reading.limit()));
        }
      }
    }
  }

  /** Every answer this foot gives, to be compared with those of another and nothing else. */
  Likeness answers(FactSheet sheet) {
    StringBuilder sides = new StringBuilder(2 * limits.size());
    limits.forEach(
        (what, held) -> {
          Reading reading = sheet.readings().get(what);
          for (String id : held) {
            sides.append(side(reading, sheet.limits().get(id)));
          }
        });
    List<Object> words = new ArrayList<>(sheet.seen().values());
    words.add(sheet.cracks() == null ? "" : sheet.cracks().stream().map(Asked::words).toList());
    words.add(sheet.wall() == null ? "" : sheet.wall().stream().map(Asked::words).toList());
    return new Likeness(sides.toString(), words);
  }

  private static char side(Reading reading, Limit limit) {
    if (reading == null || limit == null) {
      return '?';
    }
    return reading.satisfies(limit) ? '+' : reading.misses(limit) ? '-' : '?';
  }

  private static List<String> words(Crack crack) {
    List<String> words = new ArrayList<>(6);
    words.add(crack.place());
    words.add(crack.side());
    words.add(crack.starts());
    words.add(crack.depth());
    words.add(crack.bleeds());
    words.add(crack.moves());
    return words;
  }

  private static List<String> words(Stretch stretch) {
    List<String> words = new ArrayList<>(3);
    words.add(stretch.side());
    words.add(stretch.state());
    words.add(stretch.moist());
    return words;
  }
}
