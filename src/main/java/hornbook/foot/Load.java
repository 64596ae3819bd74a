package hornbook.foot;

import hornbook.foot.number.Interval;

/** What a foot carries. Unknown where the weight or a measure is unknown. */
public final class Load {
  /** Standard gravity, m/s2. */
  private static final double GRAVITY = 9.80665;

  private static final double KG_IN_A_POUND = 0.45359237;
  private static final double MM_IN_AN_INCH = 25.4;

  private Load() {}

  /** Force on one foot of a horse that stands square, N: half of its pair's share of the weight. */
  public static double standing(double bodyWeight, boolean fore, LoadRates rates) {
    double share = fore ? rates.frontShare() : 1 - rates.frontShare();
    return bodyWeight * GRAVITY * share / 2;
  }

  /** Peak vertical force on one foot at the trot, N (merkens-1993). */
  public static double trot(double bodyWeight, boolean fore, LoadRates rates) {
    return bodyWeight * (fore ? rates.trotFore() : rates.trotHind());
  }

  /**
   * Body weight for the size of the hoof, psi: 12.56 x weight in lb / (coronet girth in inches)2,
   * which is the weight over the area of the circle with that girth (turner-1992).
   *
   * @param bodyWeight kg
   * @param coronetGirth mm
   */
  public static double hoofLoadIndex(double bodyWeight, double coronetGirth) {
    double girth = coronetGirth / MM_IN_AN_INCH;
    return 12.56 * bodyWeight / KG_IN_A_POUND / (girth * girth);
  }

  /**
   * Pressure on the edge that bears against that if all of it did: 100 / bearing share. Unknown
   * when no edge bears, without an upper bound when none may.
   */
  public static Interval pressureRatio(Interval bearingShare) {
    return Interval.between(100 / bearingShare.high(), 100 / bearingShare.low());
  }
}
