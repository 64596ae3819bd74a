package hornbook.foot;

import hornbook.assessment.Foot;
import hornbook.assessment.Measures;
import hornbook.foot.number.UnknownAsNaN;

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
public record FootPair(
    double angle,
    double toeLength,
    double heelLength,
    double width,
    double lameness,
    double lameDays) {

  /** The comparison; all unknown when the other foot is null. */
  public static FootPair of(Foot foot, Foot other) {
    if (other == null) {
      return new FootPair(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
    Measures here = foot.measures();
    Measures there = other.measures();
    return new FootPair(
        UnknownAsNaN.orNaN(here.toeAngle()) - UnknownAsNaN.orNaN(there.toeAngle()),
        UnknownAsNaN.orNaN(here.toeLength()) - UnknownAsNaN.orNaN(there.toeLength()),
        UnknownAsNaN.orNaN(here.heelLength()) - UnknownAsNaN.orNaN(there.heelLength()),
        UnknownAsNaN.orNaN(here.width()) - UnknownAsNaN.orNaN(there.width()),
        UnknownAsNaN.orNaN(other.lameness()),
        UnknownAsNaN.orNaN(other.lameForDays()));
  }

  /** Difference in toe angle, whichever is steeper, deg. */
  public double angleGap() {
    return Math.abs(angle);
  }
}
