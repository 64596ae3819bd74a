package hornbook.assessment.word;

/** A deformity of a young limb. */
public enum Deformity implements Word {
  NONE,
  FLEXURAL,
  ANGULAR
}
