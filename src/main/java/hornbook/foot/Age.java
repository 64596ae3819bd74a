package hornbook.foot;

import hornbook.assessment.Horse;
import hornbook.foot.number.Interval;

/** Age of the horse. */
public final class Age {
  private static final int DAYS_IN_A_YEAR = 365;

  private Age() {}

  /**
   * Age in days: as given, else from the day the horse reached its age in years to the day before
   * the next, by years of 365 days.
   */
  public static Interval days(Horse horse) {
    if (horse.ageDays() != null) {
      return Interval.of(horse.ageDays());
    }
    if (horse.ageYears() == null) {
      return Interval.UNKNOWN;
    }
    double low = (double) DAYS_IN_A_YEAR * horse.ageYears();
    return new Interval(low, low + DAYS_IN_A_YEAR - 1);
  }
}
