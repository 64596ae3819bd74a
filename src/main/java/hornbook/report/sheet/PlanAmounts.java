package hornbook.report.sheet;

import hornbook.assessment.quantity.Units;
import hornbook.report.words.Amounts;
import hornbook.report.words.Numbers;

/** Amounts of a job sheet: besides those of the advice, lengths of tape and weights of material. */
final class PlanAmounts {
  private static final double METRES_IN_A_FOOT = 0.3048;
  private static final double GRAMS_IN_AN_OUNCE = 28.349523125;

  private final Amounts amounts;
  private final boolean metric;

  PlanAmounts(Units units) {
    this.amounts = new Amounts(units);
    this.metric = units == Units.MM;
  }

  /** A value in the units of the reader. */
  Amounts.Amount amount(double value, String unit) {
    return switch (unit) {
      case "m" -> metric ? same(value, unit) : same(value / METRES_IN_A_FOOT, "ft");
      case "g" -> metric ? same(value, unit) : same(value / GRAMS_IN_AN_OUNCE, "oz");
      default -> amounts.amount(value, unit);
    };
  }

  String text(double low, double high, String unit) {
    boolean tape = unit.equals("m");
    boolean weight = unit.equals("g");
    if (!tape && !weight) {
      return amounts.text(low, high, unit, 0);
    }
    Amounts.Amount amount = amount(low, unit);
    return Numbers.rounded(amount.value(), metric && weight ? 0 : 1) + " " + amount.unit();
  }

  private static Amounts.Amount same(double value, String unit) {
    return new Amounts.Amount(value, unit);
  }
}
