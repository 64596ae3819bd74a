package hornbook.report.words;

import hornbook.assessment.quantity.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers the way they are spoken of in the yard. */
public final class Numbers {
  /** Well below the first whole number that a double leaves out. */
  private static final double WHOLE = 1e9;

  private Numbers() {}

  /** Rounded to so many decimals, with no zeros hanging on. */
  public static String rounded(double value, int decimals) {
    if (value == Math.rint(value) && Math.abs(value) < WHOLE) {
      return Long.toString((long) value);
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /**
   * Inches to the nearest sixteenth: {@code 3 5/8}. What rounds to nothing, and is not, in
   * decimals.
   */
  static String sixteenths(double inches) {
    String said = Units.sixteenths(inches);
    return said.equals("0") ? rounded(inches, 3) : said;
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
  public static String withUnit(String number, String unit) {
    return switch (unit) {
      case "" -> number;
      case "deg" -> number + "°";
      case "%" -> number + "%";
      case "C" -> number + " °C";
      case "F" -> number + " °F";
      case "grade" -> "grade " + number;
      case "ratio" -> number + " to 1";
      case "hours", "days", "weeks", "years" ->
          number + " " + (number.equals("1") ? unit.substring(0, unit.length() - 1) : unit);
      case "mm/month" -> number + " mm a month";
      case "in/month" -> number + " in a month";
      default -> number + " " + unit;
    };
  }

  /** {@code 1 caution}, {@code 2 cautions}. */
  public static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }

  /** {@code 1 grade}, {@code 0.5 grades}. */
  public static String counted(double count, String what) {
    String number = rounded(count, 1);
    return number + " " + what + (number.equals("1") ? "" : "s");
  }

  /** From one number to another, the unit said once: {@code grade 1 to 2}, {@code 2 to 4 mm}. */
  public static String spanned(String from, String top) {
    String grade = "grade ";
    return top.startsWith(grade)
        ? grade + from + " to " + top.substring(grade.length())
        : from + " to " + top;
  }
}
