package hornbook.assessment.word;

/** What kind of shoe is on the foot. */
public enum PresentShoe implements Word {
  PLAIN,
  BAR,
  HEART_BAR,
  WEDGED,
  ROLLED
}
