package hornbook.assessment.word;

/** Where a blood stain shows in the horn. */
public enum Stain implements Word {
  NONE,
  SOLE,
  CORN_SEAT
}
