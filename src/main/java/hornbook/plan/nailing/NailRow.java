package hornbook.plan.nailing;

import hornbook.foot.number.EdgeInterval;
import hornbook.foot.wall.NailBranch;
import java.util.List;

/**
 * Sets out the nails of one branch: as many as are wanted, in wall certain to take them, as far
 * apart as the usual spacing lets them be and otherwise as near the toe as they can.
 */
final class NailRow {
  private static final double STEP = 0.5;

  private NailRow() {}

  /**
   * Places in mm from the middle of the toe, in order; fewer than wanted where no more fit.
   *
   * @param widest usual greatest distance of two nails, mm
   */
  static List<Double> places(NailBranch branch, int wanted, double widest) {
    List<Double> closest = branch.positions();
    int count = Math.min(wanted, closest.size());
    for (double apart = widest; apart > branch.spacing(); apart -= STEP) {
      List<Double> places = apart(branch, apart).positions();
      if (places.size() >= count) {
        return places.subList(0, count);
      }
    }
    return closest.subList(0, count);
  }

  /** The same branch with the edge under a clip taken out. */
  static NailBranch without(NailBranch branch, double from, double to) {
    return new NailBranch(
        branch.side(),
        EdgeInterval.without(branch.certain(), from, to),
        EdgeInterval.without(branch.possible(), from, to),
        branch.spacing());
  }

  private static NailBranch apart(NailBranch branch, double spacing) {
    return new NailBranch(branch.side(), branch.certain(), branch.possible(), spacing);
  }
}
