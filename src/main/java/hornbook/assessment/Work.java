package hornbook.assessment;

import hornbook.assessment.word.Word;

/** What the horse is kept for. */
public enum Work implements Word {
  REST,
  LIGHT,
  SPORT,
  RACING,
  DRAUGHT,
  BREEDING
}
