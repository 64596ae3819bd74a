package hornbook.foot.number;

/**
 * The unknown number of computing. It goes through arithmetic of itself: whatever is computed from
 * an unknown number is unknown, and no comparison with one holds. No other room writes {@code NaN},
 * and none uses it for anything else; in records and facts what is unknown is absent.
 */
public final class Unknown {
  /** A number nobody knows. */
  public static final double NUMBER = Double.NaN;

  private Unknown() {}

  public static boolean is(double number) {
    return Double.isNaN(number);
  }

  /** The value of a record, where null is unknown. */
  public static double or(Double value) {
    return value == null ? NUMBER : value;
  }

  /** The value of a record, where null is unknown. */
  public static double or(Integer value) {
    return value == null ? NUMBER : value;
  }

  /** For a record or a page: null where unknown. */
  public static Double orNull(double number) {
    return is(number) ? null : number;
  }
}
