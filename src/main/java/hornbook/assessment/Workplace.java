package hornbook.assessment;

import hornbook.assessment.word.Word;

/** The ground the farrier works on. */
public enum Workplace implements Word {
  LEVEL_DRY,
  UNEVEN,
  WET
}
