package hornbook.assessment.word;

/** What comes out of a crack. */
public enum CrackSeeps implements Word {
  NOTHING,
  MOISTURE,
  PUS
}
