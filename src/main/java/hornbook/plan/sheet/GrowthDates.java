package hornbook.plan.sheet;

import hornbook.foot.GrowingOut;
import hornbook.plan.figure.Figure;
import java.time.LocalDate;

/**
 * When a defect has grown down past a place.
 *
 * @param slow days from the day it was measured, at slow growth
 * @param mean at mean growth
 * @param fast at fast growth
 * @param from the day of the visit, or null
 */
public record GrowthDates(Figure slow, Figure mean, Figure fast, LocalDate from) {

  /** The day for one of the three; null without a day of the visit. */
  public LocalDate on(Figure days) {
    return GrowingOut.date(from, days.value());
  }
}
