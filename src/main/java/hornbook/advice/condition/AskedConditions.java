package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Held;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.RowFact;
import hornbook.rulebook.fact.Seen;
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
    add(words, sheet.cracks());
    words.append("wall\n");
    add(words, sheet.wall());
    words.append("held\n");
    for (Held held : sheet.held()) {
      words.append(held.rule().id()).append(' ').append(held.from()).append('\n');
    }
    return new Signature(sides.toString(), words.toString());
  }

  private static char side(Reading reading, Limit limit) {
    Truth satisfies = limit == null ? Truth.UNKNOWN : Conditions.satisfies(reading, limit);
    return switch (satisfies) {
      case TRUE -> '+';
      case FALSE -> '-';
      case UNKNOWN -> '?';
    };
  }

  private static void add(StringBuilder words, List<? extends RowFact> rows) {
    for (RowFact row : rows == null ? List.<RowFact>of() : rows) {
      for (String name : row.names()) {
        words.append(row.word(name)).append(' ');
      }
      words.append('\n');
    }
  }
}
