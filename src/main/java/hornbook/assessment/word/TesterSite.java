package hornbook.assessment.word;

/** Where the hoof testers find pain. */
public enum TesterSite implements Word {
  TOE,
  SIDE,
  QUARTER,
  HEEL,
  FROG,
  SOLE,
  NAIL
}
