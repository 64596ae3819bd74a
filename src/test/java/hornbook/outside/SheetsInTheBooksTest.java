package hornbook.outside;

import static hornbook.plan.Jobs.ANYWAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.plan.Jobs;
import hornbook.plan.Plan;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.ClockStep;
import hornbook.plan.sheet.Technique;
import hornbook.rulebook.fact.Basis;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The numbers of job sheets against worked examples and tables in print. */
class SheetsInTheBooksTest {
  private static final String LOW =
      "toeLength: 90, heelLength: 30, toeAngle: 48, bearingLength: 100, width: 120,"
          + " toeToWidest: 50";

  /** Common arithmetic: (90 + 10) : (30 + 10) is 2.5 to 1, and equal depth turns nothing. */
  @Test
  void tenMoreAtNinetyAndThirtyGivesTwoAndAHalf() {
    Plan plan = Jobs.measured(LOW, Technique.CAST_WRAP, ANYWAY.withAdd(10.0));
    assertThat(plan.before().toeHeelRatio().value()).isCloseTo(3.0, within(1e-12));
    assertThat(plan.after().toeLength().value()).isEqualTo(100);
    assertThat(plan.after().heelLength().value()).isEqualTo(40);
    assertThat(plan.after().toeHeelRatio().value()).isCloseTo(2.5, within(1e-12));
    assertThat(plan.after().toeAngle().value()).isEqualTo(plan.before().toeAngle().value());
    assertThat(Jobs.said(plan)).contains("effect.equal");
  }

  /** The same the other way round: what brings 100 and 40 to 3 to 1 is 10 off both. */
  @Test
  void solvingForThreeReturnsToIt() {
    String built = LOW.replace("toeLength: 90, heelLength: 30", "toeLength: 100, heelLength: 40");
    Plan back = Jobs.measured(built, Technique.CAST_WRAP, ANYWAY.withTargetRatio(3.0));
    Figure off = Jobs.reckoned(back, "depth at toe and heels alike for the ratio");
    assertThat(off.value()).isCloseTo(-10, within(1e-9));
    Plan there = Jobs.measured(LOW, Technique.CAST_WRAP, ANYWAY.withTargetRatio(2.5));
    assertThat(there.after().toeHeelRatio().value()).isCloseTo(2.5, within(1e-9));
    assertThat(there.after().toeLength().value()).isCloseTo(100, within(1e-9));
  }

  /** Common trigonometry: 100 mm x tan 1, 3 and 6 degrees. */
  @ParameterizedTest
  @CsvSource({"1, 1.75", "3, 5.24", "6, 10.51"})
  void aWedgeLiftsAHundredMillimetres(double degrees, double lift) {
    Plan plan =
        Jobs.measured(
            LOW, Technique.NAIL_ON, ANYWAY.withWedge(degrees).withSupports(List.of("heel-wedge")));
    assertThat(Jobs.number(plan, "effect.wedge", "lift").value()).isCloseTo(lift, within(0.005));
    assertThat(plan.after().toeAngle().value())
        .isCloseTo(plan.before().toeAngle().value() + degrees, within(1e-9));
  }

  /** Crevier-Denoix and others 2001: under 6 degrees 5.9, 1.5 and 1.4 degrees. */
  @Test
  void aWedgeTurnsTheJointsAsMeasured() {
    Plan plan =
        Jobs.measured(
            LOW, Technique.NAIL_ON, ANYWAY.withWedge(6.0).withSupports(List.of("heel-wedge")));
    assertThat(Jobs.number(plan, "effect.wedge-joints", "coffin").value())
        .isCloseTo(5.9, within(0.05));
    assertThat(Jobs.number(plan, "effect.wedge-joints", "pastern").value())
        .isCloseTo(1.5, within(0.1));
    assertThat(Jobs.number(plan, "effect.wedge-joints", "fetlock").value())
        .isCloseTo(1.4, within(0.05));
    assertThat(Jobs.said(plan)).contains("effect.too-much");
  }

  /**
   * US Department of Agriculture 1916, Adams, The shoe, length: twice the thickness behind a
   * sloping foot, once behind a regular one, an eighth of an inch behind an upright one.
   */
  @ParameterizedTest
  @CsvSource({"42, 20", "48, 10", "58, 3"})
  void aBranchEndsBehindTheButtressByTheFormOfTheFoot(int angle, double behind) {
    Plan plan =
        Jobs.measured(
            "toeAngle: %d, pasternAngle: %d".formatted(angle, angle), Technique.NAIL_ON, ANYWAY);
    Figure branch = Jobs.reckoned(plan, "branch behind the heel buttress");
    assertThat(branch.value()).isCloseTo(behind, within(0.25));
    assertThat(branch.sources()).contains("usda-1916");
  }

  private static Plan wrapped(Double dip) {
    return Jobs.measured(LOW, Technique.CAST_WRAP, ANYWAY.withDip(dip));
  }

  /** Ayzenberg and others 2018: dip water of 9, 22 and 36 C, set in 7.0, 5.0 and 3.5 minutes. */
  @ParameterizedTest
  @CsvSource({"9, 7.0, 25.2", "22, 5.0, 31.1", "36, 3.5, 36.6"})
  void tapeSetsAsMeasured(double dip, double minutes, double peak) {
    Plan plan = wrapped(dip);
    assertThat(Jobs.reckoned(plan, "setting time of the tape").value()).isEqualTo(minutes);
    assertThat(Jobs.number(plan, "clock.tape-heat", "peak").value()).isEqualTo(peak);
    Figure range = Jobs.minutes(plan, "tape-set");
    assertThat(minutes).isBetween(range.low(), range.high());
    assertThat(range.basis()).isEqualTo(Basis.DERIVED);
  }

  @Test
  void tapeSetsFasterTheWarmerTheWaterBetweenTheRows() {
    double last = 7.0;
    for (double dip = 10; dip <= 36; dip++) {
      double set = Jobs.reckoned(wrapped(dip), "setting time of the tape").value();
      assertThat(set).isLessThan(last);
      last = set;
    }
    assertThat(Jobs.reckoned(wrapped(15.0), "setting time of the tape").value())
        .isStrictlyBetween(5.0, 7.0);
    assertThat(Jobs.reckoned(wrapped(30.0), "setting time of the tape").value())
        .isStrictlyBetween(3.5, 5.0);
  }

  /** Colder or warmer than any of the three nobody measured it: no time is given. */
  @ParameterizedTest
  @CsvSource({
    "5, clock.tape-colder, clock.tape-heat-cold",
    "8.9, clock.tape-colder, clock.tape-heat-cold",
    "36.1, clock.tape-warmer, clock.tape-heat-beyond",
    "45, clock.tape-warmer, clock.tape-heat-beyond"
  })
  void tapeDippedOutsideTheMeasuredRangeHasNoSettingTime(double dip, String time, String heat) {
    Plan plan = wrapped(dip);
    assertThat(Jobs.said(plan))
        .contains(time, heat)
        .doesNotContain("clock.dip", "clock.tape", "clock.tape-heat", "clock.tape-air")
        .doesNotContain("step.wind", "step.tape-set", "step.tape-nail", "step.weight", "step.full");
    assertThat(plan.steps()).noneMatch(step -> step.counted() == ClockStep.Counted.FROM_WETTING);
    assertThat(plan.reckoned()).noneMatch(one -> one.label().equals("setting time of the tape"));
  }

  /** Koh and others 2015: acrylic cement kept at 20, 24 and 28 C, set in 534, 414 and 381 s. */
  @ParameterizedTest
  @CsvSource({"20, 534", "24, 414", "28, 381"})
  void acrylicSetsAsMeasured(double kept, double seconds) {
    Plan plan = glued(kept);
    assertThat(Jobs.reckoned(plan, "setting time of the acrylic").value() * 60)
        .isCloseTo(seconds, within(0.5));
  }

  /** Colder or warmer than any of the three nobody measured it: no time is given. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 19.9, 28.1})
  void acrylicOutsideTheMeasuredRangeHasNoSettingTime(double kept) {
    Plan plan = glued(kept);
    assertThat(Jobs.said(plan))
        .contains("clock.acrylic-beyond")
        .doesNotContain("clock.acrylic", "step.set", "step.weight");
    assertThat(Jobs.said(glued(5))).contains("prepare.cold");
  }

  private static Plan glued(double kept) {
    return Jobs.plan(
        Jobs.advise(
            """
            visit: {airTemperature: %s C}
            kit: {adhesive: acrylic}
            feet: [{limb: left-fore}]
            """
                .formatted(kept)),
        Technique.GLUE_ON,
        ANYWAY);
  }

  /**
   * Lungwitz and Adams 1913: 4.2 to 12.7 mm a month, a third of an inch at the mean; so a torn
   * place 27.5 mm high clears nails that leave at 19 mm in one month at the mean.
   */
  @Test
  void aTornPlaceGrowsPastTheNailsAtTheRatesInPrint() {
    Plan plan =
        Jobs.plan(
            Jobs.advise(
                """
                visit: {date: 2026-03-01}
                horse: {ageYears: 8}
                feet:
                  - limb: left-fore
                    wall: [{side: medial, from: 0, to: 40, state: broken-away, height: 27.5}]
                """),
            Technique.NAIL_ON_ADAPTED,
            ANYWAY);
    assertThat(plan.aboveNailExit().mean().value()).isEqualTo(31);
    assertThat(plan.aboveNailExit().on(plan.aboveNailExit().mean()))
        .isEqualTo(LocalDate.of(2026, 4, 1));
    assertThat(plan.aboveNailExit().fast().value()).isEqualTo(21);
    assertThat(plan.aboveNailExit().slow().value()).isEqualTo(62);
  }

  /**
   * Lungwitz and Adams 1913, US Department of Agriculture 1916: a toe wall is renewed in 11 to 13
   * months, a heel wall in 3 to 5; toes of 95 to 108 mm, heels of 30 to 40 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "toe, 95, 35, 11, 13",
    "toe, 108, 40, 11, 13",
    "heel, 95, 30, 3, 5",
    "heel, 95, 40, 3, 5"
  })
  void aCrackFromTheCoronetGrowsDownInTheMonthsInPrint(
      String place, int toe, int heel, int least, int most) {
    Plan plan =
        Jobs.plan(
            Jobs.advise(
                """
                horse: {ageYears: 8}
                feet:
                  - limb: left-fore
                    measures: {toeLength: %d, heelLength: %d}
                    cracks: [{place: %s, side: medial, starts: full}]
                """
                    .formatted(toe, heel, place)),
            Technique.LEAVE_UNSHOD,
            ANYWAY);
    double days = Jobs.number(plan, "growth.crack", "mean").value();
    assertThat(days / (365 / 12.0)).isBetween((double) least, (double) most);
  }

  /** Kolstrung and others 2012: 2.1 mm a week, 12.6 in six, lies within what the sheet expects. */
  @Test
  void whatSixWeeksGrewInASurveyLiesWithinWhatTheSheetExpects() {
    Plan plan = Jobs.measured(LOW, Technique.NAIL_ON, ANYWAY);
    assertThat(plan.interval().value()).isEqualTo(42);
    Figure grown = Jobs.number(plan, "growth.by-then", "grown");
    assertThat(12.6).isBetween(grown.low(), grown.high());
  }

  /** Hunting 1895: nails an inch to an inch and a half apart; four or five hold a small shoe. */
  @Test
  void nailsStandAsFarApartAsHuntingHasThem() {
    Plan plan = shod(124, "sport", 500);
    assertThat(plan.nails()).hasSize(6);
    assertThat(plan.nails().get(1).at().value() - plan.nails().get(0).at().value())
        .isBetween(25.0, 38.1);
    assertThat(shod(105, "sport", 300).nails()).hasSizeBetween(4, 5);
  }

  /** US Department of Agriculture 1916, Adams: a heavy shoe has 3 inner and 4 outer nails, or 8. */
  @Test
  void aHeavyHorseGetsSevenNailsThreeOfThemInside() {
    Plan plan = shod(170, "draught", 850);
    assertThat(plan.nails()).hasSize(7);
    assertThat(plan.nails().stream().filter(nail -> nail.side().word().equals("medial")))
        .hasSize(3);
  }

  /** Carroll and Huntington 1988: girth 220 cm and length 180 cm are 732 kg; heavy all the same. */
  @Test
  void aHeavyHorseThatWasOnlyTapedGetsTheSame() {
    Plan plan =
        Jobs.plan(
            Jobs.advise(
                """
                horse: {ageYears: 9, work: draught, girth: 220 cm, bodyLength: 180 cm}
                feet:
                  - limb: left-fore
                    measures: {toeLength: 100, bearingLength: 176, width: 170}
                    wall:
                      - {side: medial, from: 0, to: 221, state: sound, thickness: 12}
                      - {side: lateral, from: 0, to: 221, state: sound, thickness: 12}
                """),
            Technique.NAIL_ON,
            ANYWAY);
    assertThat(plan.nails()).hasSize(7);
  }

  private static Plan shod(int width, String work, int weight) {
    return Jobs.plan(
        Jobs.advise(
            """
            horse: {work: %s, weight: %d}
            feet:
              - limb: left-fore
                measures: {toeLength: 90, bearingLength: %d, width: %d}
                wall:
                  - {side: medial, from: 0, to: %d, state: sound, thickness: 10}
                  - {side: lateral, from: 0, to: %d, state: sound, thickness: 10}
            """
                .formatted(work, weight, width + 6, width, width * 13 / 10, width * 13 / 10)),
        Technique.NAIL_ON,
        ANYWAY);
  }

  /** Lungwitz and Adams 1913: from the last nail back the shoe is 1/16 to 1/8 in wider a side. */
  @Test
  void theShoeIsFullAtTheHeels() {
    Plan plan = Jobs.measured(LOW, Technique.NAIL_ON, ANYWAY);
    assertThat(Jobs.number(plan, "shoe.heels", "least").value()).isCloseTo(25.4 / 16, within(0.05));
    assertThat(Jobs.number(plan, "shoe.heels", "most").value()).isCloseTo(25.4 / 8, within(0.05));
  }
}
