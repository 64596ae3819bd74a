package hornbook.assessment.word;

import java.util.Locale;

/** A word of the assessment format; every enum of the format is one. */
public interface Word {
  String name();

  /** The word as it stands in a file: kebab-case. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
