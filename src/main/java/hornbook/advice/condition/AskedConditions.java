package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Held;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that the rules of a rule base ask of a foot. They ask words, and whether a number lies on one
 * side of a limit or the other; two feet alike in every answer fire the same rules.
 */
public final class AskedConditions {
  private final Map<String, Set<String>> limits = new LinkedHashMap<>();

  public AskedConditions(Rulebook book) {
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
  public Signature answers(FactSheet sheet) {
    StringBuilder sides = new StringBuilder(2 * limits.size());
    limits.forEach(
        (what, held) -> {
          Reading reading = sheet.readings().get(what);
          for (String id : held) {
            sides.append(side(reading, sheet.limits().get(id)));
          }
        });
    StringBuilder words = new StringBuilder(2_000);
    for (List<Seen> seen : sheet.seen().values()) {
      for (Seen one : seen) {
        words.append(one.what()).append('=').append(one.word()).append('\n');
      }
    }
    words.append("cracks\n");
    if (sheet.cracks() != null) {
      sheet.cracks().forEach(crack -> add(words, crack));
    }
    words.append("wall\n");
    if (sheet.wall() != null) {
      sheet.wall().forEach(stretch -> add(words, stretch));
    }
    words.append("held\n");
    for (Held held : sheet.held()) {
      words.append(held.rule().id()).append(' ').append(held.from()).append('\n');
    }
    return new Signature(sides.toString(), words.toString());
  }

  private static char side(Reading reading, Limit limit) {
    if (reading == null || limit == null) {
      return '?';
    }
    return reading.satisfies(limit) ? '+' : reading.misses(limit) ? '-' : '?';
  }

  private static void add(StringBuilder words, Crack crack) {
    words.append(crack.place()).append(' ').append(crack.side()).append(' ');
    words.append(crack.starts()).append(' ').append(crack.depth()).append(' ');
    words.append(crack.bleeds()).append(' ').append(crack.moves()).append('\n');
  }

  private static void add(StringBuilder words, Stretch stretch) {
    words.append(stretch.side()).append(' ').append(stretch.state()).append(' ');
    words.append(stretch.moist()).append(' ').append(stretch.damp()).append('\n');
  }
}
