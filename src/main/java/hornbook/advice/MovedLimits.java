package hornbook.advice;

import hornbook.advice.fact.FactSheet;
import hornbook.rulebook.Condition;
import hornbook.rulebook.LimitChange;
import hornbook.rulebook.Practice;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Reading;
import java.util.List;

/** Which of the limits that a local practice moved touch the advice on a foot. */
public final class MovedLimits {
  private MovedLimits() {}

  /**
   * Those a rule that fired rests on, and those that a number of the foot meets otherwise than it
   * met the limit before: what a moved limit keeps silent is touched as well. Limits that the
   * computing takes touch every foot they hold for.
   */
  public static List<LimitChange> touching(Rulebook book, FootAdvice foot) {
    Practice practice = book.practice();
    return practice == null
        ? List.of()
        : practice.changes().stream()
            .filter(change -> change.after().equals(foot.sheet().limits().get(change.after().id())))
            .filter(
                change ->
                    change.after().computing()
                        || cited(foot, change)
                        || turned(book, foot.sheet(), change))
            .toList();
  }

  private static boolean cited(FootAdvice foot, LimitChange change) {
    return foot.firings().stream()
        .anyMatch(firing -> firing.conclusion().because().contains(change.after()));
  }

  private static boolean turned(Rulebook book, FactSheet sheet, LimitChange change) {
    return book.rules().values().stream().anyMatch(rule -> turned(rule, sheet, change));
  }

  private static boolean turned(RuleEntry rule, FactSheet sheet, LimitChange change) {
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfReading asked
          && rule.limitBoundTo(asked.limit()).equals(change.after().id())) {
        Reading reading = sheet.readings().get(asked.what());
        if (reading != null && turned(reading, change)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean turned(Reading reading, LimitChange change) {
    return reading.satisfies(change.before()) != reading.satisfies(change.after())
        || reading.misses(change.before()) != reading.misses(change.after());
  }
}
