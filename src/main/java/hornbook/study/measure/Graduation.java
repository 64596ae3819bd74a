package hornbook.study.measure;

import hornbook.assessment.quantity.Unit;

/**
 * The marks a tool is read by, evenly apart from 0 on: nobody reads anything between them.
 *
 * @param apart how far apart they lie, in the unit: a whole number, or one over a whole number
 */
public record Graduation(Unit unit, double apart) {
  static final double SIXTEENTH = 1 / 16.0;

  /** A little less than any mark is off by conversion. */
  private static final double SAME = 1e-6;

  /** The first mark beyond a value, counted from 0. */
  public long beyond(double kept, boolean up) {
    double marks = unit.fromKept(kept) / apart;
    return (long) (up ? Math.floor(marks + SAME) + 1 : Math.ceil(marks - SAME) - 1);
  }

  /** The last mark within a bound. */
  public long within(double bound, boolean up) {
    double marks = unit.fromKept(bound) / apart;
    return (long) (up ? Math.floor(marks + SAME) : Math.ceil(marks - SAME));
  }

  /** The value at a mark, in the unit the records keep. */
  public double kept(long mark) {
    return unit.toKept(apart >= 1 ? mark * apart : mark / Math.rint(1 / apart));
  }
}
