package hornbook.assessment;

import hornbook.assessment.word.Word;

/** What a vet has judged on a foot. */
public enum Judged implements Word {
  CRACK,
  WALL_LOSS,
  YOUNG_LIMB,
  LAMENESS
}
