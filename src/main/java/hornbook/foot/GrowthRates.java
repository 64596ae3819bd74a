package hornbook.foot;

/**
 * How fast horn grows, mm a month of 30.4375 days: slow, mean and fast.
 *
 * @throws IllegalArgumentException when they are not above 0 and in that order
 */
public record GrowthRates(double slow, double mean, double fast) {
  public GrowthRates {
    if (!(0 < slow && slow <= mean && mean <= fast)) {
      throw new IllegalArgumentException("growth " + slow + ", " + mean + ", " + fast);
    }
  }
}
