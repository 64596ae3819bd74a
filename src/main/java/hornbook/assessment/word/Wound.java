package hornbook.assessment.word;

/** Where the skin about the foot is wounded. */
public enum Wound implements Word {
  NONE,
  CORONET,
  HEEL_BULB,
  PASTERN
}
