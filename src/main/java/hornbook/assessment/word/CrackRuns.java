package hornbook.assessment.word;

/** Which way a crack runs. */
public enum CrackRuns implements Word {
  UPRIGHT,
  ACROSS
}
