package hornbook.record;

import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.foot.Growth;
import hornbook.foot.GrowthRates;
import hornbook.foot.number.Unknown;

/**
 * A defect of the wall at one visit, what growth foresaw of it, and what the next visit found.
 * Lengths in mm; unknown where something was not measured.
 *
 * @param after its height at the next visit; unknown where it is gone or was not measured
 * @param low the least height foreseen: fast growth
 * @param high the greatest height foreseen: slow growth
 */
public record DefectGrowth(
    Side side,
    double from,
    double to,
    double before,
    double after,
    double low,
    double high,
    Course course) {

  /** How it went. */
  public enum Course {
    AS_FORECAST,
    /** Higher than slow growth leaves it: little has grown, or it runs up. */
    SLOWER,
    /** Lower than fast growth brings it: measured otherwise, or cut away. */
    FASTER,
    /** It stands higher than before. */
    CLIMBED,
    /** No longer in a map that was made; growth alone could have done that. */
    GROWN_OUT,
    /** No longer in a map that was made, and growth alone cannot have done that. */
    GONE_EARLY,
    /** The next visit mapped no wall there, or measured no height. */
    NOT_MEASURED
  }

  /**
   * The forecast: horn grows down by the rate times the time, and the foot is dressed back to the
   * length it had. What the toe was longer or shorter after stands under the defect too, so the
   * forecast is widened by it, down or up.
   *
   * @param later the defect found on that side at the next visit; null for none
   * @param mapped whether the next visit mapped that side
   * @param longer toe length at the next visit less that at this; 0 where one is not known
   * @param error measuring error of a length
   */
  static DefectGrowth of(
      WallStretch now,
      WallStretch later,
      boolean mapped,
      long days,
      GrowthRates rates,
      double longer,
      double error) {
    double before = Unknown.or(now.height());
    double after = later == null ? Unknown.NUMBER : Unknown.or(later.height());
    double low = Math.max(0, before - Growth.in(days, rates.fast()) + Math.min(0, longer));
    double high = Math.max(0, before - Growth.in(days, rates.slow()) + Math.max(0, longer));
    Course course = course(before, after, low, high, error, later == null, mapped);
    return new DefectGrowth(
        now.side(), Unknown.or(now.from()), Unknown.or(now.to()), before, after, low, high, course);
  }

  private static Course course(
      double before,
      double after,
      double low,
      double high,
      double error,
      boolean gone,
      boolean mapped) {
    if (!mapped || Unknown.is(before) || !gone && Unknown.is(after)) {
      return Course.NOT_MEASURED;
    }
    if (gone) {
      return low <= error ? Course.GROWN_OUT : Course.GONE_EARLY;
    }
    if (after > before + error && after > high + error) {
      return Course.CLIMBED;
    }
    if (after > high + error) {
      return Course.SLOWER;
    }
    return after < low - error ? Course.FASTER : Course.AS_FORECAST;
  }
}
