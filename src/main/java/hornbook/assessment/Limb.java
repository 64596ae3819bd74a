package hornbook.assessment;

import hornbook.assessment.word.Word;

/** The limb a foot belongs to. */
public enum Limb implements Word {
  LEFT_FORE,
  RIGHT_FORE,
  LEFT_HIND,
  RIGHT_HIND;

  public boolean fore() {
    return this == LEFT_FORE || this == RIGHT_FORE;
  }

  /** The other foot of the pair: left fore and right fore, left hind and right hind. */
  public Limb pair() {
    return switch (this) {
      case LEFT_FORE -> RIGHT_FORE;
      case RIGHT_FORE -> LEFT_FORE;
      case LEFT_HIND -> RIGHT_HIND;
      case RIGHT_HIND -> LEFT_HIND;
    };
  }
}
