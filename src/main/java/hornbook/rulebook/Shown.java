package hornbook.rulebook;

import hornbook.assessment.word.Word;

/** Where what a rule concludes is told. */
public enum Shown implements Word {
  ALWAYS,

  /** For a caution that is true of every foot: on the job sheet, in full and in JSON. */
  IN_FULL,

  /** For a call that is only to mention: where no sooner call stands on the foot. */
  UNLESS_CALLED_SOONER
}
