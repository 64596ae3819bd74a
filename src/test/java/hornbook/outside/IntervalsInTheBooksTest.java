package hornbook.outside;

import static hornbook.outside.Yard.after;
import static hornbook.outside.Yard.cautions;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The intervals that books and papers give, at their ends. */
class IntervalsInTheBooksTest {

  /**
   * Castelijns 2000: a foal at least every four weeks. USDA 1916 (Adams, care of unshod hoofs) lets
   * a stabled colt go four to six weeks: past six is late by both.
   */
  @ParameterizedTest
  @CsvSource({"28, false", "29, true", "43, true"})
  void a_stabled_foal_is_trimmed_within_four_weeks(int days, boolean late) {
    assertThat(cautions(after(days, "ageDays: 150", ", shoeing: unshod")).contains("interval-past"))
        .isEqualTo(late);
  }

  /** Lesniak and others 2017: 4 to 6 weeks for a working horse. */
  @ParameterizedTest
  @CsvSource({"28, false", "42, false", "43, true"})
  void a_working_horse_is_shod_within_six_weeks(int days, boolean late) {
    assertThat(
            cautions(after(days, "ageYears: 9, work: sport", ", shoeing: nailed"))
                .contains("interval-past"))
        .isEqualTo(late);
  }

  /** USDA 1916, Holcombe, interfering: a horse that brushes is reset every 3 to 4 weeks. */
  @ParameterizedTest
  @CsvSource({"21, false", "28, false", "45, true"})
  void a_horse_that_brushes_is_reset_within_four_weeks(int days, boolean late) {
    var foot = after(days, "ageYears: 9", ", lameness: 0, brushing: true");
    assertThat(cautions(foot).contains("brushing-interval")).isEqualTo(late);
    assertThat(foot.referrals()).isEmpty();
  }

  /** USDA 1916, Holcombe, contracted heels: reset at least monthly. Frog 60 by 40 is contracted. */
  @ParameterizedTest
  @CsvSource({"30, 40, false", "31, 40, true", "31, 41, false"})
  void contracted_heels_are_reset_monthly(int days, int frogWidth, boolean late) {
    String frog = ", measures: {frogLength: 60 mm, frogWidth: %d mm}".formatted(frogWidth);
    assertThat(cautions(after(days, "ageYears: 9", frog)).contains("contracted-interval"))
        .isEqualTo(late);
  }

  /** Reeks 1906, R001 of ch. I: the overgrown shoe bends onto the seat of corn. */
  @Test
  void an_overgrown_shoe_and_a_corn_go_together() {
    String corn = ", shoeing: nailed, signs: {stain: corn-seat}";
    assertThat(cautions(after(70, "ageYears: 9", corn))).contains("overgrown-shoe");
    assertThat(cautions(after(30, "ageYears: 9", corn))).doesNotContain("overgrown-shoe");
  }

  /**
   * Malone and Davies 2019: hoof angle fell on shod feet over seven weeks and rose on bare ones.
   */
  @ParameterizedTest
  @CsvSource({"nailed, true", "unshod, false"})
  void a_shod_foot_with_under_run_heels_grows_flatter(String shoeing, boolean flatter) {
    String foot = ", shoeing: %s, measures: {toeAngle: 47 deg, heelAngle: 38 deg}";
    assertThat(
            cautions(after(20, "ageYears: 9", foot.formatted(shoeing)))
                .contains("flatter-by-next-visit"))
        .isEqualTo(flatter);
  }
}
