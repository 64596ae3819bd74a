package hornbook.plan.sheet;

/** The parts of a sheet, in order of work. */
public enum SheetPart {
  DRESS,
  PREPARE,
  NAILS,
  SHOE,
  BUILD,
  EFFECT,
  CLOCK,
  GROWTH,
  OWNER,
  VET,
  TROT
}
