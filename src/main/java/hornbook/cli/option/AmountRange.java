package hornbook.cli.option;

import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.quantity.Unit;
import hornbook.cli.base.Failure;

/**
 * What an option takes as an amount: a number with its unit, or in the unit that is meant.
 *
 * @param name of the option
 * @param unit kept by the program; null for a bare number
 * @param least the least and
 * @param most the most that makes sense; our own judgement, to catch slips of the pen
 */
record AmountRange(String name, Unit unit, double least, double most, String example) {

  /** The amount in the kept unit; null for null. */
  Double of(String text) {
    if (text == null) {
      return null;
    }
    Quantity quantity = Quantity.parse(text);
    boolean fits =
        quantity != null
            && (quantity.unit() == null
                || unit != null && quantity.unit().dimension() == unit.dimension());
    if (fits) {
      double amount = unit == null ? quantity.number() : quantity.kept(unit);
      if (least <= amount && amount <= most) {
        return amount;
      }
    }
    throw Failure.usage(
        name + " cannot be " + text,
        "allowed: " + written(least) + " to " + written(most) + ", such as " + example);
  }

  private String written(double amount) {
    return unit == null ? Double.toString(amount) : Quantity.write(amount, unit);
  }
}
