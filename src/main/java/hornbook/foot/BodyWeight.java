package hornbook.foot;

import hornbook.assessment.Horse;
import hornbook.foot.number.Interval;
import hornbook.foot.number.Unknown;

/**
 * Body weight.
 *
 * @param kg unknown when unknown
 * @param how null when unknown
 */
public record BodyWeight(double kg, How how) {
  private static final BodyWeight UNKNOWN = new BodyWeight(Unknown.NUMBER, null);

  /** How the weight came to be known. */
  public enum How {
    MEASURED,
    ESTIMATED
  }

  /**
   * The weight as measured, else as estimated from girth and length of body. The estimate holds for
   * grown horses: it is not made for one known to be younger.
   *
   * @param grownDays age in days from which a horse counts as grown
   */
  public static BodyWeight of(Horse horse, double grownDays) {
    if (horse.weight() != null) {
      return new BodyWeight(horse.weight(), How.MEASURED);
    }
    Interval age = Age.days(horse);
    boolean young = age.known() && age.low() < grownDays;
    double kg = estimate(Unknown.or(horse.girth()) / 10, Unknown.or(horse.bodyLength()) / 10);
    return young || Unknown.is(kg) ? UNKNOWN : new BodyWeight(kg, How.ESTIMATED);
  }

  /**
   * Weight in kg: girth2 x length / 11 900, both in cm, length from point of shoulder to point of
   * buttock (carroll-1988).
   */
  public static double estimate(double girth, double length) {
    return girth * girth * length / 11_900;
  }
}
