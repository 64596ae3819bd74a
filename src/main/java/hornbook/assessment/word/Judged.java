package hornbook.assessment.word;

/** What a vet has judged on a foot. */
public enum Judged implements Word {
  CRACK,
  WALL_LOSS,
  YOUNG_LIMB,
  LAMENESS
}
