package hornbook.foot;

import hornbook.assessment.Care;
import hornbook.foot.number.Interval;

/** Growth of horn. Lengths in mm, rates in mm a month, unknown where something is unknown. */
public final class Growth {
  /** A month is a twelfth of 365.25 days. */
  public static final double DAYS_IN_A_MONTH = 30.4375;

  private static final int DAYS_IN_A_WEEK = 7;

  private Growth() {}

  /** What grows in so many days. */
  public static double in(double days, double rate) {
    return days * rate / DAYS_IN_A_MONTH;
  }

  /** Days until horn that now stands so high has grown down to a lower height; 0 when it has. */
  public static double days(double height, double down, double rate) {
    return Math.max(0, height - down) / rate * DAYS_IN_A_MONTH;
  }

  /** The same in weeks. */
  public static double weeks(double height, double down, double rate) {
    return days(height, down, rate) / DAYS_IN_A_WEEK;
  }

  /**
   * What one foot has grown in a month since its wall was lost.
   *
   * @param least the fewest days over which that was measured well enough
   */
  public static Interval seen(Care care, double least) {
    if (care.wallGoneDays() == null || care.hornSince() == null) {
      return Interval.UNKNOWN;
    }
    boolean longEnough = care.wallGoneDays() >= least;
    return longEnough
        ? Interval.of(care.hornSince() * DAYS_IN_A_MONTH / care.wallGoneDays())
        : Interval.UNKNOWN;
  }

  /** Months in which a wall of the length is renewed from the coronary band. */
  public static double renewal(double length, double rate) {
    return length / rate;
  }
}
