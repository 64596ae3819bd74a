package hornbook.foot.wall;

import hornbook.assessment.WallState;

/** The states of wall by what they are worth to the farrier, best first. */
public enum WallGroup {
  /** Holds a nail. */
  SOUND,
  /** Flared, cracked or repaired: bears, but is not sound. */
  WEAK,
  /** Separated or crumbling: there, but not to be borne on. */
  SEPARATED,
  /** Broken away or resected. */
  MISSING;

  public static WallGroup of(WallState state) {
    return switch (state) {
      case SOUND -> SOUND;
      case FLARED, CRACKED, REPAIRED -> WEAK;
      case SEPARATED, CRUMBLING -> SEPARATED;
      case BROKEN_AWAY, RESECTED -> MISSING;
    };
  }

  /** Missing or separated. */
  public boolean defect() {
    return this == SEPARATED || this == MISSING;
  }
}
