package hornbook.assessment.word;

/** What was pierced or cut. */
public enum Puncture implements Word {
  NONE,
  SOLE,
  FROG,
  HEEL_BULB,
  PASTERN
}
