package hornbook.report.drawing;

import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;

/**
 * Where the corners of a foot lie when it is seen from the side, with the ground level. The old
 * corners are those of the foot as measured, set into the same frame: what lies between old and new
 * ground is what a job adds or takes off.
 *
 * @param toe foremost point of the wall on the ground, without what is laid on in front
 * @param heel where the heel wall meets the ground
 * @param coronetToe the coronary band at the middle of the toe
 * @param coronetHeel the coronary band at the heel
 * @param oldToe the toe on the ground as it was measured
 * @param oldHeel the heel on the ground as it was measured
 * @param foremost the foremost point of all, with what is laid on in front
 * @param breakover where the foot rolls over
 * @param middle on the ground, below the middle of the foot
 * @param rearmost the end of the bearing, with a branch that goes on behind the heel
 */
record SideShape(
    DrawnPoint toe,
    DrawnPoint heel,
    DrawnPoint coronetToe,
    DrawnPoint coronetHeel,
    DrawnPoint oldToe,
    DrawnPoint oldHeel,
    DrawnPoint foremost,
    DrawnPoint breakover,
    DrawnPoint middle,
    DrawnPoint rearmost) {

  /**
   * The foot with something built on. Depth runs along the toe wall at both ends, as {@link
   * SideProfile} takes it; what is not known is left unknown.
   */
  static SideShape of(SideProfile before, AddedMaterial build) {
    SideProfile after = before.with(build);
    double angle = before.toeAngle();
    DrawnPoint oldToe = new DrawnPoint(0, 0);
    DrawnPoint oldHeel = new DrawnPoint(before.bearingLength(), 0);
    DrawnPoint toe = build.toeDepth() == 0 ? oldToe : oldToe.at(angle, -build.toeDepth());
    DrawnPoint heel = build.heelDepth() == 0 ? oldHeel : oldHeel.at(angle, -build.heelDepth());
    double turn = before.tilt(build.toeDepth(), build.heelDepth());
    Frame frame = new Frame(toe, turn);
    double forward =
        build.front() == 0 ? 0 : build.front() / Math.sin(Math.toRadians(after.toeAngle()));
    DrawnPoint foremost = new DrawnPoint(-forward, 0);
    DrawnPoint newHeel = frame.of(heel);
    return new SideShape(
        frame.of(toe),
        newHeel,
        frame.of(oldToe.at(angle, before.toeLength())),
        frame.of(oldHeel.at(before.heelAngle(), before.heelLength())),
        frame.of(oldToe),
        frame.of(oldHeel),
        foremost,
        foremost.moved(after.setBack(), 0),
        foremost.moved(after.toeToWidest(), 0),
        newHeel.moved(build.behind(), 0));
  }

  /** The frame in which the new toe is the origin and the new ground level. */
  private record Frame(DrawnPoint toe, double turn) {
    DrawnPoint of(DrawnPoint point) {
      return point.moved(-toe.x(), -toe.y()).turned(turn);
    }
  }
}
