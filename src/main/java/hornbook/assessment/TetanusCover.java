package hornbook.assessment;

/** Whether the horse is protected against tetanus. */
public enum TetanusCover implements Word {
  CURRENT,
  LAPSED
}
