package hornbook.rulebook;

import hornbook.rulebook.fact.Limit;

/** The numbers that would do: from one to another, each end counted in or not. */
public record Range(double low, boolean lowIn, double high, boolean highIn) {
  static final Range ANY =
      new Range(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false);

  static Range between(double low, double high) {
    return new Range(low, true, high, true);
  }

  /** What lies on the side of a limit that is asked for: that satisfies it, or that misses it. */
  public static Range of(Limit limit, boolean satisfies) {
    boolean above = (limit.direction() == Limit.Direction.AT_LEAST) == satisfies;
    boolean itself = limit.inclusive() == satisfies;
    return above
        ? new Range(limit.value(), itself, Double.POSITIVE_INFINITY, false)
        : new Range(Double.NEGATIVE_INFINITY, false, limit.value(), itself);
  }

  public Range and(Range other) {
    boolean ownLow = low > other.low || (low == other.low && !lowIn);
    boolean ownHigh = high < other.high || (high == other.high && !highIn);
    return new Range(
        ownLow ? low : other.low,
        ownLow ? lowIn : other.lowIn,
        ownHigh ? high : other.high,
        ownHigh ? highIn : other.highIn);
  }

  public boolean empty() {
    return low > high || (low == high && !(lowIn && highIn));
  }

  /** Whether every number in this range is in the other. */
  public boolean within(Range other) {
    return and(other).equals(this);
  }
}
