package hornbook.assessment.word;

/** The shape of the sole. */
public enum SoleShape implements Word {
  CUPPED,
  FLAT,
  DROPPED
}
