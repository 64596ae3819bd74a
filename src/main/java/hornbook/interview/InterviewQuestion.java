package hornbook.interview;

import hornbook.advice.Question;
import hornbook.assessment.Side;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.Fields;
import hornbook.foot.number.Unknown;

/**
 * One question put to the farrier.
 *
 * @param path the field in the assessment
 * @param matter what the answer could change; null for what only says whose foot it is
 * @param side the side of the wall being mapped; null elsewhere
 * @param from where the stretch begins whose end is asked for, mm; unknown elsewhere
 * @param edge length of that side as the outline gives it, mm; unknown when it cannot be drawn
 */
public record InterviewQuestion(
    Form form, String path, Question matter, Side side, double from, double edge) {
  /** What kind of answer is wanted. */
  public enum Form {
    /** Which feet. */
    FEET,
    /** What a field may hold. */
    FIELD,
    /** How many cracks. */
    CRACKS,
    /** Where a stretch of wall ends. */
    STRETCH_END
  }

  static InterviewQuestion of(Form form, String path, Question matter) {
    return new InterviewQuestion(form, path, matter, null, Unknown.NUMBER, Unknown.NUMBER);
  }

  /** The field of the assessment asked for. */
  public Field field() {
    return Fields.at(path);
  }
}
