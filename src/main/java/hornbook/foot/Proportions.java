package hornbook.foot;

import hornbook.assessment.Measures;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;

/**
 * The numbers of a foot that a job changes, for the before and the after of a job sheet: mm,
 * degrees; any may be unknown.
 *
 * @param hoofPasternDifference toe angle minus pastern angle
 * @param toeToWidest foremost point of the foot to below the middle of it
 * @param breakover from below the middle of the foot forward to where it rolls over
 * @param heelSupport bearing length behind the middle of the foot less that ahead of it
 */
public record Proportions(
    double toeLength,
    double heelLength,
    double toeHeelRatio,
    double toeAngle,
    double hoofPasternDifference,
    double width,
    double bearingLength,
    double toeToWidest,
    double breakover,
    double heelSupport) {

  public static Proportions before(Measures measures) {
    return after(measures, AddedMaterial.NOTHING);
  }

  /** With material added; the width grows by twice what is laid on each side. */
  public static Proportions after(Measures measures, AddedMaterial build) {
    return of(
        SideProfile.of(measures).with(build), Unknown.or(measures.width()) + 2 * build.sides());
  }

  private static Proportions of(SideProfile foot, double width) {
    return new Proportions(
        foot.toeLength(),
        foot.heelLength(),
        foot.toeHeelRatio(),
        foot.toeAngle(),
        foot.hoofPasternDifference(),
        width,
        foot.bearingLength(),
        foot.toeToWidest(),
        foot.breakover(),
        foot.heelSupport());
  }
}
