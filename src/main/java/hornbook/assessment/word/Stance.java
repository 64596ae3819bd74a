package hornbook.assessment.word;

/** How the limb stands, seen from in front. */
public enum Stance implements Word {
  STRAIGHT,
  BASE_WIDE,
  BASE_NARROW,
  TOE_OUT,
  TOE_IN
}
