package hornbook.plan;

/** The parts of a sheet, in order of work. */
public enum Part {
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
