package hornbook.assessment;

import hornbook.assessment.word.Word;

/** A side of the foot: medial is inner, lateral is outer. */
public enum Side implements Word {
  MEDIAL,
  LATERAL
}
