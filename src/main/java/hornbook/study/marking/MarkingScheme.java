package hornbook.study.marking;

import java.util.Map;

/**
 * How answers are marked.
 *
 * @param step marks are given in multiples of it, rounded down
 * @param dangerous the share of all marks that a dangerous miss leaves at the most
 * @param defensible the share of a point's marks for a choice that may be defended
 * @param anotherReason the share for what is right for a reason that does not hold
 * @param wrong the share of a point's marks that each wrong item of a list costs
 */
public record MarkingScheme(
    String name,
    double step,
    double dangerous,
    double defensible,
    double anotherReason,
    double wrong,
    Map<MarkedPoint, Worth> points) {
  /** The name of the format, which every scheme states. */
  public static final String FORMAT = "hornbook-marking/1";

  /**
   * What one point is worth on a foot.
   *
   * @param enough so many right items of a list win all marks; 0 where all are wanted
   */
  public record Worth(double marks, int enough, String says) {}

  /** All marks there are for one foot. */
  public double ofOneFoot() {
    return points.values().stream().mapToDouble(Worth::marks).sum();
  }

  /** Marks rounded down to whole steps; a hair below a step counts as on it. */
  double rounded(double marks) {
    return Math.floor(marks / step + 1e-9) * step;
  }
}
