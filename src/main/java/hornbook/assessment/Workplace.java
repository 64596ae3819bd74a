package hornbook.assessment;

/** The ground the farrier works on. */
public enum Workplace implements Word {
  LEVEL_DRY,
  UNEVEN,
  WET
}
