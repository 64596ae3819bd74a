package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import hornbook.foot.number.Interval;
import java.util.List;
import org.junit.jupiter.api.Test;

class UsualToeLengthTest {

  /** turner-1992, from memory: 76, 82.5 and 89 mm. */
  @Test
  void readsTheTable() {
    assertThat(Trade.USUAL_TOE.at(360)).isEqualTo(Interval.of(76));
    assertThat(Trade.USUAL_TOE.at(450)).isEqualTo(Interval.of(82.5));
    assertThat(Trade.USUAL_TOE.at(575)).isEqualTo(Interval.of(89));
  }

  @Test
  void betweenTwoBandsItMayBeEither() {
    assertThat(Trade.USUAL_TOE.at(410)).isEqualTo(new Interval(76, 82.5));
  }

  @Test
  void beyondTheTableItIsUnknown() {
    assertThat(Trade.USUAL_TOE.at(300)).isEqualTo(Interval.UNKNOWN);
    assertThat(Trade.USUAL_TOE.at(700)).isEqualTo(Interval.UNKNOWN);
    assertThat(Trade.USUAL_TOE.at(Double.NaN)).isEqualTo(Interval.UNKNOWN);
    assertThat(new UsualToeLength(List.of()).at(450)).isEqualTo(Interval.UNKNOWN);
  }

  @Test
  void bandsThatOverlapAreRefused() {
    var first = new UsualToeLength.Band(360, 400, 76);
    var second = new UsualToeLength.Band(390, 475, 82.5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new UsualToeLength(List.of(first, second)));
  }
}
