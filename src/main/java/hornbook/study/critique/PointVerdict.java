package hornbook.study.critique;

import hornbook.assessment.word.Word;

/** What is said of one point of an answer, in the order a tutor would say it. */
public enum PointVerdict {
  MISSED_DANGEROUS,
  UNFOUNDED_DANGEROUS,
  AGREED,
  DEFENSIBLE,
  RIGHT_FOR_ANOTHER_REASON,
  UNFOUNDED,
  MISSED,
  UNANSWERED;

  public String word() {
    return Word.kebab(name());
  }

  /** Whether a horse or a person could come to harm by it. */
  public boolean dangerous() {
    return this == MISSED_DANGEROUS || this == UNFOUNDED_DANGEROUS;
  }

  /** Whether the point was right, or may be argued. */
  public boolean stands() {
    return this == AGREED || this == DEFENSIBLE || this == RIGHT_FOR_ANOTHER_REASON;
  }

  /** Whether something was said that does not hold on this foot. */
  public boolean wrong() {
    return this == UNFOUNDED || this == UNFOUNDED_DANGEROUS;
  }
}
