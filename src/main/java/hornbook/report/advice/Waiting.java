package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.report.words.HeldWords;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.reserve.Reserves;

/** What is told to be done and has to wait, because a call for the vet holds the cut back. */
final class Waiting {
  private final Reserves held;

  Waiting(FootAdvice foot) {
    this.held = foot.reserves();
  }

  /** The sentence with when to do it, where a call holds it back. */
  String told(String says, RuleEntry rule) {
    boolean waits =
        rule.text().does().stream()
            .anyMatch(deed -> held.cuts().stream().anyMatch(cut -> deed.endsWith(cut.word())));
    return waits ? says + " All cutting here waits: " + HeldWords.once(held) + "." : says;
  }
}
