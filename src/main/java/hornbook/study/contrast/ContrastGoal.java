package hornbook.study.contrast;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;

/**
 * What contrasts are to bring about.
 *
 * @param subject the technique or support asked for, or null
 */
public record ContrastGoal(Kind kind, String subject) {
  /** The kinds of goal. */
  public enum Kind {
    /** Some other advice, whatever it is. */
    ANY,
    /** A technique as first choice. */
    FIRST_CHOICE,
    /** A technique or support that may be used. */
    USABLE,
    /** Nothing: what was asked for is so already. */
    REACHED
  }

  /**
   * What is looked for first where a technique or support is asked for: a technique as first
   * choice, a support that may be used.
   */
  static ContrastGoal of(FootAdvice foot, String subject) {
    if (subject == null) {
      return new ContrastGoal(Kind.ANY, null);
    }
    OptionAdvice technique = foot.technique(subject);
    boolean reached =
        technique == null
            ? usable(foot.support(subject).verdict().word())
            : technique.verdict() == Verdict.FIRST_CHOICE;
    Kind kind = technique == null ? Kind.USABLE : Kind.FIRST_CHOICE;
    return new ContrastGoal(reached ? Kind.REACHED : kind, subject);
  }

  /** What is looked for where that is out of reach, or the same where there is nothing less. */
  ContrastGoal less(FootAdvice foot) {
    boolean open = kind == Kind.FIRST_CHOICE && !usable(foot.technique(subject).verdict().word());
    return open ? new ContrastGoal(Kind.USABLE, subject) : this;
  }

  /** Whether a turn brings it about. */
  boolean wants(OutcomeChange turn) {
    return switch (kind) {
      case ANY -> true;
      case FIRST_CHOICE -> turn.toFirstChoice() && turn.id().equals(subject);
      case USABLE -> usable(turn.to()) && !usable(turn.from()) && turn.id().equals(subject);
      case REACHED -> false;
    };
  }

  private static boolean usable(String verdict) {
    return verdict.equals(Verdict.WORKABLE.word()) || verdict.equals(Verdict.FIRST_CHOICE.word());
  }
}
