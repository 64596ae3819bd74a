package hornbook.rulebook.practice;

import hornbook.rulebook.Condition;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The limits that decide whether the vet is called. */
public final class ReferralLimits {
  /** What parts the grown horse from the foal, and the foal from the newborn. */
  private static final Map<String, String> AGES =
      Map.of("age", "age.grown", "birthHoof", "age.birth-hoof");

  private ReferralLimits() {}

  /** Those bound by rules that refer, and by rules whose findings such a rule rests on. */
  public static Set<String> of(Rulebook book) {
    Set<String> limits = new TreeSet<>();
    Set<String> seen = new HashSet<>();
    Deque<RuleEntry> open = new ArrayDeque<>();
    book.rules().values().stream()
        .filter(rule -> rule.outcome() instanceof RuleConclusion.Refers)
        .forEach(open::add);
    while (!open.isEmpty()) {
      RuleEntry rule = open.pop();
      if (seen.add(rule.id())) {
        rule.limits().forEach(limits::add);
        for (Condition condition : rule.conditions()) {
          if (condition instanceof Condition.OfReading reading) {
            computedWith(book, reading.what(), limits);
          } else if (condition instanceof Condition.OfFinding finding) {
            makers(book, finding.what(), open);
          } else if (condition instanceof Condition.OfSeen word && AGES.containsKey(word.what())) {
            limits.add(AGES.get(word.what()));
          }
        }
      }
    }
    return limits;
  }

  /** Those of the computing that a number is worked out with: moved, they move the number. */
  private static void computedWith(Rulebook book, String reading, Set<String> limits) {
    ReadingKind kind = ReadingKind.of(reading);
    for (Limit limit : kind == null ? List.<Limit>of() : book.limits()) {
      if (limit.computing() && kind.computedWith().stream().anyMatch(limit.id()::startsWith)) {
        limits.add(limit.id());
      }
    }
  }

  private static void makers(Rulebook book, String finding, Deque<RuleEntry> open) {
    for (RuleEntry rule : book.rules().values()) {
      if (rule.outcome() instanceof RuleConclusion.Finds finds && finds.finding().equals(finding)) {
        open.add(rule);
      }
    }
  }
}
