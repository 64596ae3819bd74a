package hornbook.foot.wall;

import hornbook.assessment.Side;
import hornbook.foot.number.EdgeInterval;
import hornbook.foot.number.Interval;
import java.util.ArrayList;
import java.util.List;

/**
 * Where nails may go on one side.
 *
 * @param certain windows of wall known to take a nail, in order, none overlapping
 * @param possible windows of wall that may take one, in order, none overlapping; they cover the
 *     certain ones
 * @param spacing least distance between two nails, mm
 */
public record NailBranch(
    Side side, List<EdgeInterval> certain, List<EdgeInterval> possible, double spacing) {

  /** The most nails that certainly fit, and the most that may. */
  public Interval count() {
    int low = pack(certain, null);
    return new Interval(low, Math.max(low, pack(possible, null)));
  }

  /** Places for the most nails that certainly fit, each as near the toe as it can be, mm. */
  public List<Double> positions() {
    List<Double> places = new ArrayList<>();
    pack(certain, places);
    return places;
  }

  /** Places for the most nails that may fit, mm. */
  public List<Double> possiblePositions() {
    List<Double> places = new ArrayList<>();
    pack(possible, places);
    return places;
  }

  /**
   * The most nails, by setting each as near the toe as the one before allows: no other choice can
   * leave more room for those that follow, so the count is the greatest there is.
   */
  private int pack(List<EdgeInterval> windows, List<Double> places) {
    int count = 0;
    double next = 0;
    for (int i = 0; i < windows.size(); i++) {
      EdgeInterval window = windows.get(i);
      for (double at = Math.max(next, window.from()); at <= window.to() + SideSurvey.SAME; ) {
        count++;
        if (places != null) {
          places.add(at);
        }
        next = at + spacing;
        at = next;
      }
    }
    return count;
  }
}
