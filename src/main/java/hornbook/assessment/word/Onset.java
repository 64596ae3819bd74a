package hornbook.assessment.word;

/** How a lameness came on. */
public enum Onset implements Word {
  NONE,
  GRADUAL,
  SUDDEN
}
