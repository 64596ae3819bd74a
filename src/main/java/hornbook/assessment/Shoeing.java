package hornbook.assessment;

/** What is on the foot now. */
public enum Shoeing implements Word {
  UNSHOD,
  NAILED,
  GLUED,
  WRAPPED
}
