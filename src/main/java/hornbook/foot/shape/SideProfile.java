package hornbook.foot.shape;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;

import hornbook.assessment.Measures;
import hornbook.foot.number.Unknown;

/**
 * The foot seen from the side, as a four-sided figure: the toe wall from coronary band to ground,
 * the ground, the heel wall, the hairline. Lengths in mm, angles to the ground in degrees; any may
 * be unknown.
 *
 * <p>Added depth runs parallel to the toe wall at both ends, so the toe gains just its depth in
 * length and so does the heel; equal depth moves the ground down parallel to itself and leaves
 * angle and bearing length alone; unequal depth turns the ground about the foot. The pastern is
 * taken to stand still.
 *
 * @param toeToWidest foremost point of the foot to below the middle of the foot, along the ground
 * @param setBack how far behind the foremost point the foot breaks over
 */
public record SideProfile(
    double toeLength,
    double heelLength,
    double toeAngle,
    double heelAngle,
    double pasternAngle,
    double bearingLength,
    double toeToWidest,
    double setBack) {

  public static SideProfile of(Measures m) {
    return new SideProfile(
        Unknown.or(m.toeLength()),
        Unknown.or(m.heelLength()),
        Unknown.or(m.toeAngle()),
        Unknown.or(m.heelAngle()),
        Unknown.or(m.pasternAngle()),
        Unknown.or(m.bearingLength()),
        Unknown.or(m.toeToWidest()),
        0);
  }

  /** Toe length to heel length (dyson-2011: more than 3 in front is a low heel). */
  public double toeHeelRatio() {
    return toeLength / heelLength;
  }

  /** Toe angle minus heel angle, deg (turner-1992: an under-run heel from 5). */
  public double toeHeelAngleDifference() {
    return toeAngle - heelAngle;
  }

  /** The hoof-pastern axis, deg: below 0 broken back, above 0 broken forward (lungwitz-1913). */
  public double hoofPasternDifference() {
    return toeAngle - pasternAngle;
  }

  /** Per cent of the bearing length that lies ahead of the middle of the foot. */
  public double shareAheadOfMiddle() {
    return 100 * toeToWidest / bearingLength;
  }

  /**
   * Heel support, mm: the bearing length behind the middle of the foot less that ahead of it. A
   * vertical through the middle of the middle phalanx should halve the bearing length (stashak-7,
   * p. 1092), so 0 is a centred foot and below 0 one that lacks support behind.
   */
  public double heelSupport() {
    return bearingLength - 2 * toeToWidest;
  }

  /**
   * The lever arm of breakover, mm: from below the middle of the foot forward to where it rolls.
   */
  public double breakover() {
    return toeToWidest - setBack;
  }

  /**
   * How far the ground turns under depths that differ, deg; above 0 raises the heel. With d the
   * heel's depth less the toe's, a the toe angle and L the bearing length: tan t = d sin a / (L - d
   * cos a). Depth measured square to the ground turns it by atan(difference / L), see {@link
   * Depth#square}.
   */
  public double tilt(double toeDepth, double heelDepth) {
    double difference = heelDepth - toeDepth;
    if (difference == 0) {
      return 0;
    }
    double a = toRadians(toeAngle);
    return toDegrees(Math.atan2(difference * sin(a), bearingLength - difference * cos(a)));
  }

  /**
   * The same foot with material added. Thickness in front leaves both lengths and the angle, and
   * carries the toe forward by thickness / sin(toe angle).
   */
  public SideProfile with(AddedMaterial build) {
    double toe = build.toeDepth();
    double heel = build.heelDepth();
    double turn = tilt(toe, heel);
    double t = toRadians(turn);
    double before = toRadians(toeAngle);
    double angle = toeAngle + turn;
    double ground = turn == 0 ? bearingLength : bearingLength * sin(before) / sin(toRadians(angle));
    double forward = build.front() == 0 ? 0 : build.front() / sin(toRadians(angle));
    double ahead =
        toe == 0
            ? toeToWidest * cos(t)
            : (toeToWidest + toe * cos(before)) * cos(t) - toe * sin(before) * sin(t);
    return new SideProfile(
        toeLength + toe,
        heelLength + heel,
        angle,
        heelAngle + turn,
        pasternAngle,
        ground + forward + build.behind(),
        ahead + forward,
        setBack + build.setBack());
  }
}
