package hornbook.advice.outcome;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The limits from memory that some rule holds each number against. */
final class AskedLimits {
  private static volatile AskedLimits last;

  private final Rulebook book;
  private final Map<String, List<String>> limits = new HashMap<>();

  private AskedLimits(Rulebook book) {
    this.book = book;
    Map<String, Set<String>> numbers = new HashMap<>();
    for (RuleEntry rule : book.rules().values()) {
      for (Condition condition : rule.conditions()) {
        if (condition instanceof Condition.OfReading reading) {
          String limit = rule.limitBoundTo(reading.limit());
          numbers.computeIfAbsent(limit, id -> new HashSet<>()).add(reading.what());
        }
      }
    }
    for (Limit limit : book.limits()) {
      if (limit.basis() != Basis.MEMORY) {
        continue;
      }
      // One id may stand for several limits: those of fore and hind, of foal and grown horse.
      Set<String> held = numbers.remove(limit.id());
      if (held != null) {
        held.forEach(
            what -> limits.computeIfAbsent(what, any -> new ArrayList<>()).add(limit.id()));
      }
    }
  }

  /** Those of a rule base; the last ones asked for are kept. */
  static AskedLimits of(Rulebook book) {
    AskedLimits known = last;
    if (known == null || known.book != book) {
      known = new AskedLimits(book);
      last = known;
    }
    return known;
  }

  /** The ids of those a number is compared with, in the order of the rule base. */
  List<String> of(String number) {
    return limits.getOrDefault(number, List.of());
  }
}
