package hornbook.plan.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.plan.figure.Figure;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SettingTableTest {
  private static final SettingTable TABLE =
      new SettingTable("set", List.of(row(10, 8), row(20, 4), row(30, 2)));

  private static SettingTable.Row row(double at, double minutes) {
    return new SettingTable.Row(
        Figure.measured("at", at, "C", null), Figure.measured("set", minutes, "minutes", null));
  }

  private static Figure at(double temperature) {
    return TABLE.at(Figure.measured("dip", temperature, "C", null));
  }

  @Test
  void givesWhatWasMeasuredWhereItWasMeasured() {
    assertThat(at(10).value()).isEqualTo(8);
    assertThat(at(20).value()).isEqualTo(4);
    assertThat(at(30).value()).isEqualTo(2);
  }

  @Test
  void liesOnTheLineBetweenTwoRows() {
    assertThat(at(15).value()).isCloseTo(6, within(1e-9));
    assertThat(at(27.5).value()).isCloseTo(2.5, within(1e-9));
  }

  @Test
  void isUnknownColderOrWarmerThanWasMeasured() {
    assertThat(at(9.9).known()).isFalse();
    assertThat(at(30.1).known()).isFalse();
    assertThat(TABLE.covers(Figure.measured("dip", 9.9, "C", null))).isFalse();
    assertThat(TABLE.covers(Figure.measured("dip", 10, "C", null))).isTrue();
    assertThat(TABLE.covers(Figure.measured("dip", 30.1, "C", null))).isFalse();
  }

  @Test
  void isUnknownWithoutATemperature() {
    Figure unknown = TABLE.at(Figure.measured("air", null, "C", "visit.airTemperature"));
    assertThat(unknown.known()).isFalse();
    assertThat(unknown.missing()).containsExactly("visit.airTemperature");
  }

  @Property
  void neverSetsLaterInWarmerWater(
      @ForAll @DoubleRange(min = 10, max = 30) double one,
      @ForAll @DoubleRange(min = 10, max = 30) double other) {
    Figure colder = at(Math.min(one, other));
    Figure warmer = at(Math.max(one, other));
    assertThat(warmer.low()).isLessThanOrEqualTo(colder.low() + 1e-9);
    assertThat(warmer.high()).isLessThanOrEqualTo(colder.high() + 1e-9);
  }
}
