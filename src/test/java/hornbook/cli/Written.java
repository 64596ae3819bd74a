package hornbook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Assessments written for tests of the command line. */
final class Written {
  /** A sound fore foot, little looked at. */
  static final String PLAIN =
      """
      format: hornbook-assessment/1
      horse: {name: Bracken, ageYears: 9, weight: 500 kg}
      feet:
        - limb: left-fore
          measures: {toeLength: 92 mm, heelLength: 40 mm}
          signs: {objectInPlace: false, digitalPulse: normal}
      """;

  /** The same horse with a nail still in the foot. */
  static final String NAIL_IN_FOOT =
      PLAIN.replace("objectInPlace: false", "objectInPlace: true").replace("Bracken", "Sorrel");

  private Written() {}

  static String file(Path folder, String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text).toString();
    } catch (IOException unwritten) {
      throw new UncheckedIOException(unwritten);
    }
  }
}
