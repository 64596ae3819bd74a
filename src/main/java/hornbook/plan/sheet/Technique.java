package hornbook.plan.sheet;

import hornbook.assessment.word.Word;

/** The techniques a sheet can be made for, from least to most intervention. */
public enum Technique {
  COME_BACK,
  DRAW_NAIL,
  DRY_BANDAGE,
  POULTICE,
  LEAVE_UNSHOD,
  LEAVE_OPEN,
  NAIL_ON,
  NAIL_ON_ADAPTED,
  GLUE_ON,
  CAST_WRAP,
  PROSTHETIC_WALL;

  /** The name the rule base and the command line use. */
  public String id() {
    return Word.kebab(name());
  }

  /** The technique of that name, or null. */
  public static Technique of(String id) {
    for (Technique one : values()) {
      if (one.id().equals(id)) {
        return one;
      }
    }
    return null;
  }

  /** Whether it is first aid: nothing is dressed, fitted or built. */
  public boolean firstAid() {
    return this == COME_BACK || this == DRAW_NAIL || dressing();
  }

  /** Whether the foot goes under a bandage. */
  public boolean dressing() {
    return this == DRY_BANDAGE || this == POULTICE;
  }

  /** Whether a shoe goes on, or may go on to what is built. */
  public boolean shod() {
    return nailed() || covers();
  }

  /** Whether a nailed shoe is the whole of it. */
  public boolean nailed() {
    return this == NAIL_ON || this == NAIL_ON_ADAPTED;
  }

  /** Whether horn is bonded to or covered. */
  public boolean covers() {
    return this == GLUE_ON || this == CAST_WRAP || this == PROSTHETIC_WALL;
  }

  /** Whether wall is built, and can be built to a wanted depth. */
  public boolean builds() {
    return this == CAST_WRAP || this == PROSTHETIC_WALL;
  }
}
