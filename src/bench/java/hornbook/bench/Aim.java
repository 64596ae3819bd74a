package hornbook.bench;

import java.util.Locale;

/**
 * What is aimed at, and today's figure; {@code NaN} where it could not be measured here.
 *
 * @param most whether the bound is the most, or the least
 */
record Aim(String what, boolean most, double bound, String unit, double today) {
  boolean met() {
    return most ? today <= bound : today >= bound;
  }

  String line() {
    String found = Double.isNaN(today) ? "not here" : number(today) + unit;
    String verdict = Double.isNaN(today) ? "" : met() ? "pass" : "MISS";
    return String.format(
        Locale.ROOT,
        "%-58s %8s %10s %10s  %s",
        what,
        most ? "at most" : "at least",
        number(bound) + unit,
        found,
        verdict);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value >= 100 ? "%,.0f" : "%.2f", value);
  }
}
