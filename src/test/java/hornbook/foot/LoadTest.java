package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.foot.number.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadTest {

  /** merkens-1993: 11.59 and 10.21 N/kg, so 5795 and 5105 N for 500 kg. */
  @Test
  void peakForceAtTheTrot() {
    assertThat(Load.trot(500, true, Trade.LOAD)).isCloseTo(5795, within(0.01));
    assertThat(Load.trot(500, false, Trade.LOAD)).isCloseTo(5105, within(0.01));
  }

  /** Four feet together carry the horse; dutto-2004 puts 57 per cent of it in front. */
  @Test
  void standingTheFourFeetCarryTheHorse() {
    double fore = Load.standing(500, true, Trade.LOAD);
    double hind = Load.standing(500, false, Trade.LOAD);
    assertThat(2 * fore + 2 * hind).isCloseTo(4903.325, within(1e-6));
    assertThat(2 * fore).isCloseTo(0.57 * 4903.325, within(1e-6));
  }

  /** Worked examples of a trade journal: 1200 lb on 14 in, 1000 lb on 12.5 in. */
  @ParameterizedTest
  @CsvSource({"1200, 14, 76.9", "1000, 12.5, 80.4"})
  void hoofLoadIndex(double pounds, double inches, double psi) {
    double index = Load.hoofLoadIndex(pounds * 0.45359237, inches * 25.4);
    assertThat(index).isCloseTo(psi, within(0.05));
  }

  /** crevier-2001: a wedge of 6 deg turns coffin, pastern and fetlock by 5.9, 1.5 and 1.4 deg. */
  @Test
  void jointsUnderAWedge() {
    JointAngles joints = new JointAngles(0.98, 0.24, 0.23).under(6);
    assertThat(joints.coffin()).isCloseTo(5.9, within(0.05));
    assertThat(joints.pastern()).isCloseTo(1.5, within(0.07));
    assertThat(joints.fetlock()).isCloseTo(1.4, within(0.05));
  }

  @Test
  void pressureGrowsAsTheBearingEdgeShrinks() {
    assertThat(Load.pressureRatio(Interval.of(100))).isEqualTo(Interval.of(1));
    assertThat(Load.pressureRatio(new Interval(25, 50))).isEqualTo(new Interval(2, 4));
    assertThat(Load.pressureRatio(new Interval(0, 80)))
        .isEqualTo(new Interval(1.25, Double.POSITIVE_INFINITY));
    assertThat(Load.pressureRatio(Interval.of(0))).isEqualTo(Interval.UNKNOWN);
    assertThat(Load.pressureRatio(Interval.UNKNOWN)).isEqualTo(Interval.UNKNOWN);
  }

  @Test
  void withoutAWeightNothingIsKnown() {
    assertThat(Load.trot(Double.NaN, true, Trade.LOAD)).isNaN();
    assertThat(Load.standing(Double.NaN, true, Trade.LOAD)).isNaN();
    assertThat(Load.hoofLoadIndex(500, Double.NaN)).isNaN();
  }
}
