package hornbook.foot;

import hornbook.assessment.Foot;
import hornbook.assessment.Measures;

/**
 * A foot against the other of its pair: what this one has more of, {@code NaN} where either was not
 * measured. An uneven pair differs in toe angle by 1.5 degrees or more (wiggers-2015).
 *
 * @param angle toe angle, deg
 * @param toeLength mm
 * @param heelLength mm
 * @param width mm
 * @param lameness of the other foot, grade 0 to 5
 * @param lameDays days the other foot has been lame
 */
public record Pair(
    double angle,
    double toeLength,
    double heelLength,
    double width,
    double lameness,
    double lameDays) {

  /** The comparison; all unknown when the other foot is null. */
  public static Pair of(Foot foot, Foot other) {
    if (other == null) {
      return new Pair(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
    Measures here = foot.measures();
    Measures there = other.measures();
    return new Pair(
        Known.orNaN(here.toeAngle()) - Known.orNaN(there.toeAngle()),
        Known.orNaN(here.toeLength()) - Known.orNaN(there.toeLength()),
        Known.orNaN(here.heelLength()) - Known.orNaN(there.heelLength()),
        Known.orNaN(here.width()) - Known.orNaN(there.width()),
        Known.orNaN(other.lameness()),
        Known.orNaN(other.lameForDays()));
  }

  /** Difference in toe angle, whichever is steeper, deg. */
  public double angleGap() {
    return Math.abs(angle);
  }

  /** Whether the toe angles differ by the gap or more; false also when unknown. */
  public boolean uneven(double gap) {
    return angleGap() >= gap;
  }
}
