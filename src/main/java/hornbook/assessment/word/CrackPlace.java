package hornbook.assessment.word;

/** Where a crack lies round the wall. */
public enum CrackPlace implements Word {
  TOE,
  SIDE,
  QUARTER,
  HEEL,
  BAR
}
