package hornbook.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers the way they are spoken of in the yard. */
final class Numbers {
  private static final int PARTS_OF_AN_INCH = 16;

  private Numbers() {}

  /** Rounded to so many decimals, with no zeros hanging on. */
  static String rounded(double value, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /**
   * Inches to the nearest sixteenth: {@code 3 5/8}. What rounds to nothing, and is not, in
   * decimals.
   */
  static String sixteenths(double inches) {
    long parts = Math.round(Math.abs(inches) * PARTS_OF_AN_INCH);
    if (parts == 0) {
      return rounded(inches, 3);
    }
    long whole = parts / PARTS_OF_AN_INCH;
    long top = parts % PARTS_OF_AN_INCH;
    long bottom = PARTS_OF_AN_INCH;
    while (top > 0 && top % 2 == 0) {
      top /= 2;
      bottom /= 2;
    }
    String fraction = top == 0 ? "" : top + "/" + bottom;
    String gap = whole > 0 && top > 0 ? " " : "";
    return (inches < 0 ? "-" : "") + (whole > 0 ? whole : "") + gap + fraction;
  }

  /** How many decimals a gauge, a tape or a sum in this unit is worth. */
  static int decimals(String unit) {
    return switch (unit) {
      case "mm", "cm", "deg", "C", "F", "psi", "mm/month" -> 1;
      case "in", "in/month", "ratio", "N/kg" -> 2;
      case "" -> 1;
      default -> 0;
    };
  }

  /** The number with its unit in the words people read. */
  static String withUnit(String number, String unit) {
    return switch (unit) {
      case "" -> number;
      case "deg" -> number + "°";
      case "%" -> number + "%";
      case "C" -> number + " °C";
      case "F" -> number + " °F";
      case "grade" -> "grade " + number;
      case "ratio" -> number + " to 1";
      case "days", "weeks", "years" ->
          number + " " + (number.equals("1") ? unit.substring(0, unit.length() - 1) : unit);
      case "mm/month" -> number + " mm a month";
      case "in/month" -> number + " in a month";
      default -> number + " " + unit;
    };
  }

  /** {@code 1 caution}, {@code 2 cautions}. */
  static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }

  /** From one number to another, the unit said once: {@code grade 1 to 2}, {@code 2 to 4 mm}. */
  static String spanned(String from, String top) {
    String grade = "grade ";
    return top.startsWith(grade)
        ? grade + from + " to " + top.substring(grade.length())
        : from + " to " + top;
  }
}
