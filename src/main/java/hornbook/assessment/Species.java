package hornbook.assessment;

import hornbook.assessment.word.Word;

/** What kind of animal it is. */
public enum Species implements Word {
  HORSE,
  PONY,
  DONKEY,
  MULE
}
