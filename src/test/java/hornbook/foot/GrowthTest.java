package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrowthTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  /** kolstrung-2012: 2.1 mm a week is 13 mm in six weeks. */
  @Test
  void growthOfSixWeeks() {
    assertThat(Growth.in(42, 2.1 / 7 * Growth.DAYS_IN_A_MONTH)).isCloseTo(12.6, within(1e-9));
  }

  /** reeks-1906, ch. III: 1/4 in a month; 80 mm of toe in 12 to 13 months, 30 mm of heel in 5. */
  @Test
  void renewalAtReeksRate() {
    assertThat(Growth.renewal(80, 6.35)).isBetween(12.0, 13.0);
    assertThat(Growth.renewal(30, 6.35)).isCloseTo(5, within(0.5));
  }

  /**
   * lungwitz-1913 renews toe, sides and heels in 11-13, 6-8 and 3-5 months and grows 8.5 mm a
   * month, 4.2 to 12.7. Walls of 96, 60 and 34 mm (common practice, no source) renew so at the
   * mean, and no faster or slower growth of the book leaves its own times out.
   */
  @ParameterizedTest
  @CsvSource({"96, 11, 13", "60, 6, 8", "34, 3, 5"})
  void renewalTimesAgreeWithTheGrowthAndUsualHeights(double wall, double least, double most) {
    assertThat(Growth.renewal(wall, Trade.GROWTH.mean())).isBetween(least, most);
    assertThat(Growth.renewal(wall, Trade.GROWTH.fast())).isLessThan(least);
    assertThat(Growth.renewal(wall, Trade.GROWTH.slow())).isGreaterThan(most);
  }

  /** 38 mm of defect over nail exits at 21 mm: 17 mm, two months at the mean. */
  @Test
  void aDefectIsNailableAgainWhenItHasPassedTheNailExits() {
    GrowingOut out = GrowingOut.of(38, 21, Trade.GROWTH);
    assertThat(out.mean()).isCloseTo(60.875, within(1e-9));
    assertThat(GrowingOut.date(DAY, out.mean())).isEqualTo(LocalDate.of(2026, 5, 14));
    assertThat(GrowingOut.visits(out.mean(), 42)).isEqualTo(2);
    assertThat(out.fast()).isLessThan(out.mean());
    assertThat(out.slow()).isGreaterThan(out.mean());
    assertThat(Growth.weeks(38, 21, 8.5)).isCloseTo(60.875 / 7, within(1e-9));
  }

  @Test
  void aDefectBelowTheNailExitsIsNailableToday() {
    GrowingOut out = GrowingOut.of(15, 21, Trade.GROWTH);
    assertThat(out.slow()).isZero();
    assertThat(GrowingOut.date(DAY, out.slow())).isEqualTo(DAY);
    assertThat(GrowingOut.visits(out.slow(), 42)).isZero();
  }

  @Test
  void anUnknownHeightHasNoDate() {
    GrowingOut out = GrowingOut.of(Double.NaN, 21, Trade.GROWTH);
    assertThat(out.mean()).isNaN();
    assertThat(GrowingOut.date(DAY, out.mean())).isNull();
    assertThat(GrowingOut.date(DAY, Double.POSITIVE_INFINITY)).isNull();
    assertThat(GrowingOut.date(null, 30)).isNull();
    assertThat(GrowingOut.visits(out.mean(), 42)).isNaN();
  }

  @Property
  void moreGrowthNeverPostponesADate(
      @ForAll @DoubleRange(min = 0, max = 110) double height,
      @ForAll @DoubleRange(min = 0, max = 41) double past,
      @ForAll @DoubleRange(min = 4, max = 15) double rate,
      @ForAll @DoubleRange(min = 0, max = 10) double more) {
    LocalDate slower = GrowingOut.date(DAY, Growth.days(height, past, rate));
    LocalDate faster = GrowingOut.date(DAY, Growth.days(height, past, rate + more));
    assertThat(faster).isBeforeOrEqualTo(slower);
  }

  /** What has grown by the date is what was to grow, and the day before it was not. */
  @Property
  void theDateIsTheFirstThatSuffices(
      @ForAll @DoubleRange(min = 30, max = 110) double height,
      @ForAll @DoubleRange(min = 4, max = 15) double rate) {
    long days = DAY.until(GrowingOut.date(DAY, Growth.days(height, 20, rate)), ChronoUnit.DAYS);
    assertThat(Growth.in(days, rate)).isGreaterThanOrEqualTo(height - 20 - 1e-9);
    assertThat(Growth.in(days - 1, rate)).isLessThan(height - 20 + 1e-9);
  }

  @Test
  void ratesOutOfOrderAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new GrowthRates(8, 7, 9));
    assertThatIllegalArgumentException().isThrownBy(() -> new GrowthRates(0, 7, 9));
  }
}
