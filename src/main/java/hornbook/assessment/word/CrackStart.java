package hornbook.assessment.word;

/** Where a crack starts; full runs from coronet to ground. */
public enum CrackStart implements Word {
  GROUND,
  CORONET,
  FULL
}
