package hornbook.cli;

import hornbook.report.Units;
import picocli.CommandLine.Option;

/** The units numbers are told in. */
final class UnitsOption {
  @Option(
      names = "--units",
      paramLabel = "mm|inch",
      converter = All.class,
      completionCandidates = All.class,
      description = "tell lengths, weights and temperatures in mm, kg, C or in inches, lb, F")
  private Units units = Units.MM;

  Units units() {
    return units;
  }

  /** The words of {@code --units}. */
  static final class All extends Words<Units> {
    All() {
      super(Units.class);
    }
  }
}
