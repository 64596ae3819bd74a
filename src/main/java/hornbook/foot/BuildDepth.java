package hornbook.foot;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.tan;
import static java.lang.Math.toRadians;

import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;

/**
 * How deep to build: wedges and layers turned into depth along the wall, and the depth that brings
 * a foot to a wanted proportion or angle. Depths in mm, angles in degrees. A depth below 0 is horn
 * to be taken off. Unknown where a measure is unknown.
 */
public final class BuildDepth {
  private BuildDepth() {}

  /** What a wedge lifts the heel, square to the ground: bearing length x tan(angle). */
  public static double lift(double bearingLength, double wedgeAngle) {
    return bearingLength * tan(toRadians(wedgeAngle));
  }

  /** A wedge that is nothing at the toe and turns the foot by its angle. */
  public static AddedMaterial wedge(SideProfile foot, double wedgeAngle) {
    return square(foot, 0, lift(foot.bearingLength(), wedgeAngle));
  }

  /**
   * A layer such as a shoe, a pad or a wedge, its thickness measured square to the bearing face at
   * toe and heel. It turns the foot by t = atan((heel - toe) / bearing length), and each end gains
   * thickness x cos t / sin(toe angle + t) along the wall.
   */
  public static AddedMaterial square(SideProfile foot, double toe, double heel) {
    double turn = Math.atan2(heel - toe, foot.bearingLength());
    double along = cos(turn) / sin(toRadians(foot.toeAngle()) + turn);
    return AddedMaterial.depth(toe * along, heel * along);
  }

  /** The same depth at toe and heel that brings toe : heel to the ratio; the ratio is not 1. */
  public static double equalForRatio(SideProfile foot, double ratio) {
    return (foot.toeLength() - ratio * foot.heelLength()) / (ratio - 1);
  }

  /** The depth at the heel that brings toe : heel to the ratio, given the depth at the toe. */
  public static double heelForRatio(SideProfile foot, double ratio, double toeDepth) {
    return (foot.toeLength() + toeDepth) / ratio - foot.heelLength();
  }

  /** The depth at the toe that brings toe : heel to the ratio, given the depth at the heel. */
  public static double toeForRatio(SideProfile foot, double ratio, double heelDepth) {
    return (foot.heelLength() + heelDepth) * ratio - foot.toeLength();
  }

  /** The depth at the heel that brings the toe to the angle, given the depth at the toe. */
  public static double heelForAngle(SideProfile foot, double angle, double toeDepth) {
    return toeDepth + difference(foot, angle);
  }

  /** The depth at the toe that brings the toe to the angle, given the depth at the heel. */
  public static double toeForAngle(SideProfile foot, double angle, double heelDepth) {
    return heelDepth - difference(foot, angle);
  }

  /** By the sines of the triangle of old ground, new ground and toe line. */
  private static double difference(SideProfile foot, double angle) {
    return foot.bearingLength() * sin(toRadians(angle - foot.toeAngle())) / sin(toRadians(angle));
  }
}
