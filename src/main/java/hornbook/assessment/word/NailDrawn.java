package hornbook.assessment.word;

/** Whether the sore nail was drawn, and how it came out. */
public enum NailDrawn implements Word {
  NOT_DRAWN,
  DRY,
  WET
}
