package hornbook.foot.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class IntervalTest {

  @Test
  void isRefusedUpsideDownOrHalfKnown() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Interval(2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Interval(Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Interval(1, Double.NaN));
  }

  @Test
  void whatIsUnknownStaysUnknown() {
    assertThat(Interval.of(Double.NaN)).isEqualTo(Interval.UNKNOWN);
    assertThat(Interval.between(1, Double.NaN)).isEqualTo(Interval.UNKNOWN);
    assertThat(Interval.UNKNOWN.known()).isFalse();
    assertThat(Interval.UNKNOWN.exact()).isFalse();
    assertThat(Interval.UNKNOWN.contains(1)).isFalse();
    Interval one = Interval.of(1);
    assertThat(one.plus(Interval.UNKNOWN).known()).isFalse();
    assertThat(one.max(Interval.UNKNOWN).known()).isFalse();
    assertThat(one.min(Interval.UNKNOWN).known()).isFalse();
  }

  @Test
  void aQuotientByNothingIsNoNumber() {
    double without = Double.POSITIVE_INFINITY;
    assertThat(Interval.of(without)).isEqualTo(Interval.UNKNOWN);
    assertThat(Interval.between(without, without)).isEqualTo(Interval.UNKNOWN);
    assertThatIllegalArgumentException().isThrownBy(() -> new Interval(without, without));
  }

  @Test
  void combinesEndByEnd() {
    Interval a = new Interval(1, 4);
    Interval b = new Interval(2, Double.POSITIVE_INFINITY);
    assertThat(a.plus(b)).isEqualTo(new Interval(3, Double.POSITIVE_INFINITY));
    assertThat(a.max(b)).isEqualTo(new Interval(2, Double.POSITIVE_INFINITY));
    assertThat(a.min(b)).isEqualTo(new Interval(1, 4));
    assertThat(a.contains(4)).isTrue();
    assertThat(a.contains(4.1)).isFalse();
    assertThat(Interval.of(3).exact()).isTrue();
  }
}
