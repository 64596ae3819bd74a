package hornbook.assessment;

import hornbook.assessment.word.Word;

/** The state of a stretch of wall at the ground edge. */
public enum WallState implements Word {
  SOUND,
  FLARED,
  CRACKED,
  SEPARATED,
  CRUMBLING,
  BROKEN_AWAY,
  RESECTED,
  REPAIRED
}
