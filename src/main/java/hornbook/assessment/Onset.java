package hornbook.assessment;

/** How a lameness came on. */
public enum Onset implements Word {
  NONE,
  GRADUAL,
  SUDDEN
}
