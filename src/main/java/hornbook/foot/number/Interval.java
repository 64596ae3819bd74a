package hornbook.foot.number;

/**
 * What is known of a number: that it lies from {@code low} to {@code high}, both included. High may
 * be infinite. Both ends are {@code NaN} when nothing is known.
 *
 * @throws IllegalArgumentException when low lies above high, only one of them is a number, or low
 *     has no end above
 */
public record Interval(double low, double high) {
  public static final Interval UNKNOWN = new Interval(Double.NaN, Double.NaN);

  public Interval {
    boolean ordered = low <= high && low < Double.POSITIVE_INFINITY;
    if (!ordered && !(Double.isNaN(low) && Double.isNaN(high))) {
      throw new IllegalArgumentException("not an interval: " + low + " to " + high);
    }
  }

  /** A number known exactly; unknown for {@code NaN} and for a quotient by nothing. */
  public static Interval of(double value) {
    return Double.isNaN(value) || Double.isInfinite(value) ? UNKNOWN : new Interval(value, value);
  }

  /**
   * From low to high, or unknown when either end is {@code NaN}. Where even the low end is a
   * quotient by nothing there is no number to tell: unknown too.
   */
  public static Interval between(double low, double high) {
    boolean none = Double.isNaN(low) || Double.isNaN(high) || low == Double.POSITIVE_INFINITY;
    return none ? UNKNOWN : new Interval(low, high);
  }

  public boolean known() {
    return low <= high;
  }

  public boolean exact() {
    return low == high;
  }

  public boolean contains(double value) {
    return low <= value && value <= high;
  }

  /** The sum of two numbers known so far; unknown when either is. */
  public Interval plus(Interval other) {
    return between(low + other.low, high + other.high);
  }

  /** The greater of two numbers known so far; unknown when either is. */
  public Interval max(Interval other) {
    return between(Math.max(low, other.low), Math.max(high, other.high));
  }

  /** The lesser of two numbers known so far; unknown when either is. */
  public Interval min(Interval other) {
    return between(Math.min(low, other.low), Math.min(high, other.high));
  }
}
