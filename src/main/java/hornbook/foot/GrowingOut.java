package hornbook.foot;

import java.time.LocalDate;

/**
 * How long until a defect of a given height has grown down past a place on the wall (the nail
 * exits; the ground, at 0), in days from the day its height was measured.
 *
 * @param fast at the fastest growth, the soonest
 * @param mean at the mean growth
 * @param slow at the slowest growth, the latest
 */
public record GrowingOut(double fast, double mean, double slow) {

  /**
   * Height above the place / growth.
   *
   * @param height top of the defect above the ground, mm
   * @param past height of the place above the ground, mm
   */
  public static GrowingOut of(double height, double past, GrowthRates rates) {
    return new GrowingOut(
        Growth.days(height, past, rates.fast()),
        Growth.days(height, past, rates.mean()),
        Growth.days(height, past, rates.slow()));
  }

  /** The first day on which it has passed, so many days after another; null when unknown. */
  public static LocalDate date(LocalDate measured, double days) {
    return measured == null || !Double.isFinite(days)
        ? null
        : measured.plusDays((long) Math.ceil(days));
  }

  /** The first visit, of those that follow at the interval, by which it has passed; 0 for today. */
  public static double visits(double days, double intervalDays) {
    return Math.ceil(days / intervalDays);
  }
}
