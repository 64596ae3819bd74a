package hornbook.report.words;

import hornbook.assessment.quantity.Dimension;
import hornbook.assessment.quantity.Unit;
import hornbook.assessment.quantity.Units;

/**
 * Amounts in the units of the reader. The program computes in millimetres, kilograms and degrees
 * Celsius throughout; here, at the very end, numbers are put into other units.
 */
public final class Amounts {
  /** Finer than anything measured: what is converted is kept to a ten-thousandth of its unit. */
  private static final double GRAIN = 1e4;

  private final Units units;

  public Amounts(Units units) {
    this.units = units;
  }

  public Units units() {
    return units;
  }

  /** A number and the symbol of its unit; empty for counts. */
  public record Amount(double value, String unit) {}

  /** A value as facts and limits hold it, in these units. */
  public Amount amount(double value, String unit) {
    Unit from = Unit.of(unit);
    if (from != null && from.dimension() != Dimension.ANGLE) {
      Unit to = units.of(from.dimension());
      double put = to.fromKept(from.toKept(value));
      return new Amount(from == to ? value : Math.rint(put * GRAIN) / GRAIN, to.symbol());
    }
    Unit length = units.of(Dimension.LENGTH);
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
   * The same with so many more decimals than usual, or one fewer; lengths in inches come in
   * sixteenths, but with more decimals in those.
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
      return Double.isInfinite(low) || nothingBelow
          ? "not known"
          : "at least " + text(low, unit, finer);
    }
    if (Double.isInfinite(low) || nothingBelow) {
      return "at most " + text(high, unit, finer);
    }
    String from = number(amount(low, unit), finer);
    String top = text(high, unit, finer);
    boolean same = from.equals(number(amount(high, unit), finer));
    return same ? "about " + top : Numbers.spanned(from, top);
  }

  /** How far one value lies from another: {@code 2 mm}, {@code 0.2}, {@code 1 grade}. */
  public String gap(double gap, String unit) {
    return switch (unit) {
      case "ratio" -> Numbers.rounded(gap, 2);
      case "grade" -> Numbers.counted(gap, "grade");
      default -> {
        Amount amount = new Amount(gapAmount(gap, unit), amount(gap, unit).unit());
        yield Numbers.withUnit(finest(amount), amount.unit());
      }
    };
  }

  /** How far one value lies from another, as a number of these units. */
  public double gapAmount(double gap, String unit) {
    return amount(gap, unit).value() - amount(0, unit).value();
  }

  /** With as many decimals as a small gap needs to be more than nothing. */
  private static String finest(Amount amount) {
    String number = number(amount, 0);
    for (int finer = 1; number.equals("0") && amount.value() != 0 && finer < 4; finer++) {
      number = number(amount, finer);
    }
    return number;
  }

  /** From one place to another: {@code 0 to 40 mm}. */
  public String span(double from, double to, String unit) {
    return span(from, to, unit, 0);
  }

  public String span(double from, double to, String unit, int finer) {
    return Numbers.spanned(number(amount(from, unit), finer), text(to, unit, finer));
  }

  private static String number(Amount amount, int finer) {
    boolean sixteenths = amount.unit().equals("in") && finer <= 0;
    return sixteenths
        ? Numbers.sixteenths(amount.value())
        : Numbers.rounded(amount.value(), Math.max(0, Numbers.decimals(amount.unit()) + finer));
  }
}
