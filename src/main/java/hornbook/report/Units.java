package hornbook.report;

import hornbook.assessment.Dimension;
import hornbook.assessment.Unit;
import java.util.Locale;

/**
 * The units a report is written in. The program computes in millimetres, kilograms and degrees
 * Celsius throughout; here, at the very end, numbers are put into the units of the reader.
 */
public enum Units {
  MM(Unit.MM, Unit.KILOGRAM, Unit.CELSIUS),
  INCH(Unit.INCH, Unit.POUND, Unit.FAHRENHEIT);

  private final Unit length;
  private final Unit mass;
  private final Unit temperature;

  Units(Unit length, Unit mass, Unit temperature) {
    this.length = length;
    this.mass = mass;
    this.temperature = temperature;
  }

  /** A number and the symbol of its unit; empty for counts. */
  public record Amount(double value, String unit) {}

  /** The word that names these units on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Finer than anything measured: what is converted is kept to a ten-thousandth of its unit. */
  private static final double GRAIN = 1e4;

  /** A value as facts and limits hold it, in these units. */
  public Amount amount(double value, String unit) {
    Unit from = known(unit);
    if (from != null && from.dimension() != Dimension.ANGLE) {
      Unit to = of(from.dimension());
      double put = to.fromKept(from.toKept(value));
      return new Amount(from == to ? value : Math.rint(put * GRAIN) / GRAIN, to.symbol());
    }
    if (unit.startsWith("mm/") && length != Unit.MM) {
      return new Amount(length.fromKept(value), length.symbol() + unit.substring(2));
    }
    return new Amount(value, unit);
  }

  /** A value in plain text: {@code 92 mm}, {@code 3 5/8 in}, {@code 47°}, {@code 1 day}. */
  public String text(double value, String unit) {
    return text(value, unit, 0);
  }

  /**
   * The same with so many more decimals than usual; lengths in inches then come in decimals, not
   * sixteenths.
   */
  public String text(double value, String unit, int finer) {
    Amount amount = amount(value, unit);
    return Numbers.withUnit(number(amount, finer), amount.unit());
  }

  /**
   * A value known only within bounds: {@code 2 to 4}, {@code at most 5 mm}, {@code at least 12
   * weeks}.
   */
  public String text(double low, double high, String unit, int finer) {
    if (low == high) {
      return text(low, unit, finer);
    }
    boolean nothingBelow = low == 0 && !unit.equals("days") && !unit.equals("deg");
    if (Double.isInfinite(high)) {
      return Double.isInfinite(low) ? "not known" : "at least " + text(low, unit, finer);
    }
    if (Double.isInfinite(low) || nothingBelow) {
      return "at most " + text(high, unit, finer);
    }
    String from = number(amount(low, unit), finer);
    String top = text(high, unit, finer);
    boolean same = from.equals(number(amount(high, unit), finer));
    return same ? "about " + top : Numbers.spanned(from, top);
  }

  /** From one place to another: {@code 0 to 40 mm}. */
  String span(double from, double to, String unit) {
    return Numbers.spanned(number(amount(from, unit), 0), text(to, unit));
  }

  Unit of(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> length;
      case MASS -> mass;
      case TEMPERATURE -> temperature;
      case ANGLE -> Unit.DEGREE;
    };
  }

  private static String number(Amount amount, int finer) {
    boolean sixteenths = amount.unit().equals("in") && finer == 0;
    return sixteenths
        ? Numbers.sixteenths(amount.value())
        : Numbers.rounded(amount.value(), Numbers.decimals(amount.unit()) + finer);
  }

  private static Unit known(String symbol) {
    for (Unit unit : Unit.values()) {
      if (unit.symbol().equals(symbol)) {
        return unit;
      }
    }
    return null;
  }
}
