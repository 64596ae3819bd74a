package hornbook.interview;

/** What became of a line that was typed. */
public sealed interface AnswerOutcome {
  /** It is an answer, and the assessment has it now; or nothing was looked at, and that is so. */
  record Taken() implements AnswerOutcome {}

  /** It cannot be: what is allowed, and the nearest known word or null. The question stands. */
  record Refused(String found, String allowed, String nearest) implements AnswerOutcome {}

  /** More help is wanted. The question stands. */
  record Help() implements AnswerOutcome {}

  /** The last question is asked again; false where there is none before. */
  record Back(boolean moved) implements AnswerOutcome {}

  /** Enough for now. */
  record Stop() implements AnswerOutcome {}
}
