package hornbook.assessment.word;

/** Which part of the foot meets the ground first. */
public enum Landing implements Word {
  FLAT,
  HEEL_FIRST,
  TOE_FIRST,
  INSIDE_FIRST,
  OUTSIDE_FIRST
}
