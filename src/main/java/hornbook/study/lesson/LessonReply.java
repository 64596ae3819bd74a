package hornbook.study.lesson;

import hornbook.advice.FootAdvice;
import hornbook.assessment.field.FieldValue;
import hornbook.study.critique.Evidence;
import java.util.List;

/** What became of a line. */
public sealed interface LessonReply {
  /** Things looked at, with what was there. */
  record Seen(List<FieldValue> fields) implements LessonReply {}

  /** All that can be asked for. */
  record Askable(List<FieldValue> fields) implements LessonReply {}

  /** The answer was taken, or the question left. */
  record Taken() implements LessonReply {}

  /** Back at the question before, if there is one. */
  record Back(boolean moved) implements LessonReply {}

  /** No answer. */
  record Refused(String found, String allowed, String nearest) implements LessonReply {}

  /**
   * A hint.
   *
   * @param level 1 where to look, 2 what it is compared with, 3 what follows
   */
  record Hint(int level, Step step, List<OfFoot> evidence) implements LessonReply {}

  /** A rule on one of the feet. */
  record OfFoot(FootAdvice foot, Evidence evidence) {}

  /** What may be answered. */
  record Help(Step step) implements LessonReply {}

  /** The learner has had enough. */
  record Stop() implements LessonReply {}
}
