package hornbook.cli.option;

import hornbook.assessment.quantity.Units;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;

/** The units numbers are told in. */
public final class UnitsOption {
  private final ArgumentValue<Units> units;

  public UnitsOption(Arguments arguments) {
    units =
        arguments.word(
            Units.class, Units.MM, "mm, kg and Celsius, or inches, lb and Fahrenheit", "--units");
  }

  public Units units() {
    return units.value();
  }
}
