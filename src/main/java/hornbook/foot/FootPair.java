package hornbook.foot;

import hornbook.assessment.Foot;
import hornbook.assessment.Measures;
import hornbook.foot.number.Unknown;

/**
 * A foot against the other of its pair: what this one has more of, unknown where either was not
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
      return new FootPair(
          Unknown.NUMBER,
          Unknown.NUMBER,
          Unknown.NUMBER,
          Unknown.NUMBER,
          Unknown.NUMBER,
          Unknown.NUMBER);
    }
    Measures here = foot.measures();
    Measures there = other.measures();
    return new FootPair(
        Unknown.or(here.toeAngle()) - Unknown.or(there.toeAngle()),
        Unknown.or(here.toeLength()) - Unknown.or(there.toeLength()),
        Unknown.or(here.heelLength()) - Unknown.or(there.heelLength()),
        Unknown.or(here.width()) - Unknown.or(there.width()),
        Unknown.or(other.lameness()),
        Unknown.or(other.lameForDays()));
  }

  /** Difference in toe angle, whichever is steeper, deg. */
  public double angleGap() {
    return Math.abs(angle);
  }
}
