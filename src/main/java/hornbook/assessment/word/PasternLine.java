package hornbook.assessment.word;

/** Where a line down the middle of the long pastern meets the toe, seen from in front. */
public enum PasternLine implements Word {
  MIDDLE,
  INNER_TOE,
  OUTER_TOE
}
