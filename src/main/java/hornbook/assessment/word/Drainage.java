package hornbook.assessment.word;

/** Where pus or fluid comes from. */
public enum Drainage implements Word {
  NONE,
  WHITE_LINE,
  SOLE,
  CORONET,
  CRACK
}
