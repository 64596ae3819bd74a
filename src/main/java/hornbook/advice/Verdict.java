package hornbook.advice;

import hornbook.assessment.word.Word;

/** What is said of a technique or a support on a foot, the best first. */
public enum Verdict {
  FIRST_CHOICE,
  WORKABLE,
  WITH_VET,
  NOT_INDICATED,
  RULED_OUT;

  public String word() {
    return Word.kebab(name());
  }

  /** Whether the technique may still come into use on this foot. */
  public boolean open() {
    return this == FIRST_CHOICE || this == WORKABLE || this == WITH_VET;
  }
}
