package hornbook.plan.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.Advice;
import hornbook.plan.Jobs;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SettingTableTest {
  private static final Advice ADVICE = Jobs.advise("feet: [{limb: left-fore}]");
  private static final SheetDraft DRAFT =
      new SheetDraft(ADVICE, ADVICE.feet().get(0), Technique.CAST_WRAP, PlanWishes.NONE);
  private static final SettingTable TABLE =
      new SettingTable(DRAFT, "set", List.of(row(10, 8), row(20, 4), row(30, 2)));

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
  void reckonsOnBeyondTheTableBetweenBoundsAndSaysSo() {
    Figure cold = at(0);
    assertThat(cold.low()).isCloseTo(8 * 1.2, within(1e-9));
    assertThat(cold.high()).isCloseTo(8 * 1.9, within(1e-9));
    assertThat(cold.formula()).startsWith("beyond the table");
    Figure warm = at(40);
    assertThat(warm.low()).isCloseTo(2 / 1.9, within(1e-9));
    assertThat(warm.high()).isCloseTo(2 / 1.2, within(1e-9));
    assertThat(TABLE.covers(Figure.measured("dip", 9.9, "C", null))).isFalse();
    assertThat(TABLE.covers(Figure.measured("dip", 10, "C", null))).isTrue();
  }

  @Test
  void isUnknownWithoutATemperature() {
    Figure unknown = TABLE.at(Figure.measured("air", null, "C", "visit.airTemperature"));
    assertThat(unknown.known()).isFalse();
    assertThat(unknown.missing()).containsExactly("visit.airTemperature");
  }

  @Property
  void neverSetsLaterInWarmerWater(
      @ForAll @DoubleRange(min = -5, max = 50) double one,
      @ForAll @DoubleRange(min = -5, max = 50) double other) {
    Figure colder = at(Math.min(one, other));
    Figure warmer = at(Math.max(one, other));
    assertThat(warmer.low()).isLessThanOrEqualTo(colder.low() + 1e-9);
    assertThat(warmer.high()).isLessThanOrEqualTo(colder.high() + 1e-9);
  }
}
