package hornbook.assessment;

/** What was pierced. */
public enum Puncture implements Word {
  NONE,
  SOLE,
  FROG
}
