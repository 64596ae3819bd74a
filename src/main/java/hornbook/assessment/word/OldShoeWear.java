package hornbook.assessment.word;

/** Where the old shoe is worn most. */
public enum OldShoeWear implements Word {
  EVEN,
  TOE,
  HEELS,
  INSIDE,
  OUTSIDE
}
