package hornbook.assessment.word;

/** What is on the foot now. */
public enum Shoeing implements Word {
  UNSHOD,
  NAILED,
  GLUED,
  WRAPPED
}
