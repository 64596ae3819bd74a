package hornbook.assessment.field;

import hornbook.assessment.quantity.Dimension;
import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.quantity.Unit;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.tree.LocatedValue.Scalar;

/**
 * A quantity within what a horse can have, from miniature to draught, foal to old.
 *
 * @param bare the unit of a number that stands without one
 * @param least the least and
 * @param most the most, in that unit
 * @param example what it might be, in that unit
 */
public record Amount(Unit bare, double least, double most, double example) implements ScalarKind {
  public Dimension dimension() {
    return bare.dimension();
  }

  /** The least, in the unit the records keep. */
  public double leastKept() {
    return bare.toKept(least);
  }

  /** The most, in the unit the records keep. */
  public double mostKept() {
    return bare.toKept(most);
  }

  @Override
  public Class<?> type() {
    return Double.class;
  }

  /** The least number without a unit that any units allow. */
  public double leastBare() {
    return Math.min(least, Units.INCH.bare(bare).fromKept(leastKept()));
  }

  /** The greatest number without a unit that any units allow. */
  public double mostBare() {
    return Math.max(most, Units.INCH.bare(bare).fromKept(mostKept()));
  }

  /** What somebody wrote; null when it is no quantity. */
  public static Quantity written(Scalar scalar) {
    return switch (scalar.token()) {
      case NUMBER -> new Quantity(Double.parseDouble(scalar.text()), null);
      case TEXT -> Quantity.parse(scalar.text());
      default -> null;
    };
  }

  @Override
  public Taken take(Scalar scalar) {
    return take(scalar, Units.MM);
  }

  /** Reads a value, a number without a unit in those of the file. */
  public Taken take(Scalar scalar, Units units) {
    Quantity quantity = written(scalar);
    if (quantity == null) {
      return refuse(scalar);
    }
    Unit unit = quantity.unit() == null ? units.bare(bare) : quantity.unit();
    if (unit.dimension() != dimension()) {
      return refuse(scalar);
    }
    double kept = quantity.kept(unit);
    if (holds(kept)) {
      return new Taken.Value(kept);
    }
    boolean foreign = unit != bare && Double.isFinite(kept);
    String also = foreign ? " (" + Quantity.write(kept, bare) + ")" : "";
    return new Taken.Refused(scalar.kind() + also, null);
  }

  @Override
  public boolean holds(Object kept) {
    return (Double) kept >= leastKept() && (Double) kept <= mostKept();
  }

  @Override
  public String allowed() {
    StringBuilder units = new StringBuilder();
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension()) {
        units.append(units.length() == 0 ? "" : ", ").append(unit.symbol());
      }
    }
    return dimension().phrase() + " from " + range(bare) + " (" + units + ")";
  }

  /** The least and the most in a unit: {@code 15 mm to 400 mm}. */
  String range(Unit unit) {
    return Quantity.write(leastKept(), unit) + " to " + Quantity.write(mostKept(), unit);
  }

  /** In the unit of a bare number where that keeps it exact, else in the unit of the records. */
  @Override
  public String write(Object value) {
    return exact((Double) value, Quantity.write((Double) value, bare));
  }

  /** In somebody's units where that keeps it exact. */
  public String write(Double value, Units units) {
    if (units == Units.MM) {
      return write(value);
    }
    String shown = units.show(value, dimension());
    boolean exact = shown.equals(exact(value, shown));
    return exact ? shown : exact(value, Quantity.write(value, units.of(dimension())));
  }

  private String exact(Double value, String written) {
    boolean exact = value.equals(Quantity.parse(written).kept(bare));
    return exact ? written : Quantity.write(value, dimension().kept());
  }

  /** What it might be, in somebody's units. */
  public String example(Units units) {
    double kept = bare.toKept(example);
    if (units == Units.INCH && bare == Unit.METRE) {
      return Quantity.write(Unit.FOOT.toKept(Math.rint(Unit.FOOT.fromKept(kept))), Unit.FOOT);
    }
    return units == Units.MM ? Quantity.write(kept, bare) : units.show(kept, dimension());
  }
}
