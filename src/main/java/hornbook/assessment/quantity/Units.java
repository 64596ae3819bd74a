package hornbook.assessment.quantity;

import hornbook.assessment.word.Word;
import java.util.List;

/** The units a person thinks in, and quantities shown in them. */
public enum Units implements Word {
  MM("metric"),
  INCH("inches", "in", "imperial");

  private final List<String> also;

  Units(String... also) {
    this.also = List.of(also);
  }

  @Override
  public List<String> also() {
    return also;
  }

  private static final int SIXTEENTHS = 16;

  /** The unit of a number that stands without one where the records keep it in {@code usual}. */
  public Unit bare(Unit usual) {
    if (this == MM) {
      return usual;
    }
    return usual == Unit.METRE ? Unit.FOOT : of(usual.dimension());
  }

  /** Whether a length or a weight in this unit is of these units and no others. */
  public boolean knows(Unit unit) {
    boolean imperial = unit == Unit.INCH || unit == Unit.FOOT || unit == Unit.POUND;
    return (this == INCH) == imperial;
  }

  /** The unit of a dimension. */
  public Unit of(Dimension dimension) {
    if (this == MM) {
      return dimension.kept();
    }
    return switch (dimension) {
      case LENGTH -> Unit.INCH;
      case MASS -> Unit.POUND;
      case TEMPERATURE -> Unit.FAHRENHEIT;
      case ANGLE -> Unit.DEGREE;
    };
  }

  /**
   * An amount as it is read off in the yard: to a tenth, in inches to a sixteenth, in pounds to the
   * pound.
   *
   * @param kept in the unit the records keep
   */
  public String show(double kept, Dimension dimension) {
    Unit unit = of(dimension);
    double amount = unit.fromKept(kept);
    if (unit == Unit.INCH) {
      return sixteenths(amount) + " " + unit.symbol();
    }
    double grain = unit == Unit.POUND ? 1 : 10;
    double rounded = Math.rint(amount * grain) / grain + 0.0;
    boolean whole = rounded == Math.rint(rounded);
    String number = whole ? Long.toString((long) rounded) : Double.toString(rounded);
    return number + " " + unit.symbol();
  }

  /** Inches to the nearest sixteenth: {@code 3 5/8}, {@code 1/16}, {@code -2}. */
  public static String sixteenths(double inches) {
    long count = Math.round(inches * SIXTEENTHS);
    long whole = Math.abs(count) / SIXTEENTHS;
    long rest = Math.abs(count) % SIXTEENTHS;
    String sign = count < 0 ? "-" : "";
    if (rest == 0) {
      return sign + whole;
    }
    long parts = SIXTEENTHS;
    while (rest % 2 == 0) {
      rest /= 2;
      parts /= 2;
    }
    return sign + (whole == 0 ? "" : whole + " ") + rest + "/" + parts;
  }
}
