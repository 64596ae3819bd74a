package hornbook.rulebook.reserve;

import java.util.Locale;

/** What a knife, nippers or rasp may take from a foot. */
public enum Cut {
  HEELS,
  TOE,
  SOLE,
  FROG,
  DEAD_HORN,
  HOLE;

  /** The word for it in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
