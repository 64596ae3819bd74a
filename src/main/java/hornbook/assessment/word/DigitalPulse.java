package hornbook.assessment.word;

/** The pulse felt at the fetlock. */
public enum DigitalPulse implements Word {
  NORMAL,
  RAISED,
  BOUNDING
}
