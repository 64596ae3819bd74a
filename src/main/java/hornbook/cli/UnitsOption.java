package hornbook.cli;

import hornbook.assessment.Units;

/** The units numbers are told in. */
final class UnitsOption {
  private final Value<Units> units;

  UnitsOption(Arguments arguments) {
    units =
        arguments.word(
            Units.class, Units.MM, "mm, kg and Celsius, or inches, lb and Fahrenheit", "--units");
  }

  Units units() {
    return units.value();
  }
}
