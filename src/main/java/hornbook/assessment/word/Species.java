package hornbook.assessment.word;

/** What kind of animal it is. */
public enum Species implements Word {
  HORSE,
  PONY,
  DONKEY,
  MULE
}
