package hornbook.assessment.word;

/** What was pierced. */
public enum Puncture implements Word {
  NONE,
  SOLE,
  FROG
}
