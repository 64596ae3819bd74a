package hornbook.assessment;

import hornbook.assessment.word.Word;

/** Whether the horse is protected against tetanus. */
public enum TetanusCover implements Word {
  CURRENT,
  LAPSED
}
