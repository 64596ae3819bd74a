package hornbook.rulebook.fact;

import java.util.List;

/**
 * A limit of the trade, as data: the value, its unit, which side of it is asked for, where it comes
 * from and how good that ground is.
 *
 * @param inclusive whether the value itself still satisfies the limit
 * @param limbs fore or hind, or null for both
 * @param age adult or foal, or null for both
 * @param safer the way to move the limit that makes the advice more careful: up, down or neither
 * @param step the smallest change worth telling apart, in the limit's unit
 * @param computing whether the computing of a foot takes it; such a limit needs no rule
 */
public record Limit(
    String id,
    String label,
    double value,
    String unit,
    Direction direction,
    boolean inclusive,
    Limbs limbs,
    Age age,
    String source,
    String locator,
    Basis basis,
    Safer safer,
    double step,
    List<Dispute> disputes,
    boolean computing)
    implements CitedFact {

  /** Which side of the value is asked for. */
  public enum Direction {
    AT_LEAST,
    AT_MOST
  }

  /** The limbs a limit holds for. */
  public enum Limbs {
    FORE,
    HIND
  }

  /** The age a limit holds for. */
  public enum Age {
    ADULT,
    FOAL
  }

  /** The way a limit moves toward more care. */
  public enum Safer {
    UP,
    DOWN,
    NEITHER
  }

  /** What another author says instead; the value may be absent where only words differ. */
  public record Dispute(Double value, String source, String says) {}

  public boolean allows(double measured) {
    if (measured == value) {
      return inclusive;
    }
    return direction == Direction.AT_LEAST ? measured > value : measured < value;
  }

  public Limit withValue(double other) {
    return new Limit(
        id, label, other, unit, direction, inclusive, limbs, age, source, locator, basis, safer,
        step, disputes, computing);
  }
}
