package hornbook.report.record;

import hornbook.foot.number.Unknown;
import java.util.List;

/**
 * A number over the visits, and what was forecast of it.
 *
 * @param unit symbol of the unit of all numbers
 */
public record RecordChart(String title, String unit, List<Point> points) {

  /**
   * One visit.
   *
   * @param when the day of the visit in words
   * @param day days since the first visit
   * @param value what was found; unknown where it was not measured
   * @param low the least that was forecast at the visit before; unknown for no forecast
   * @param high the most
   */
  public record Point(String when, long day, double value, double low, double high) {
    boolean forecast() {
      return !Unknown.is(low) && !Unknown.is(high);
    }

    boolean measured() {
      return !Unknown.is(value);
    }
  }

  public RecordChart {
    points = List.copyOf(points);
  }

  /** Whether anything was forecast. */
  boolean forecast() {
    return points.stream().anyMatch(Point::forecast);
  }

  /** The greatest number in it. */
  double most() {
    double most = 0;
    for (Point point : points) {
      most = point.measured() ? Math.max(most, point.value()) : most;
      most = point.forecast() ? Math.max(most, point.high()) : most;
    }
    return most;
  }
}
