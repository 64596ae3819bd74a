package hornbook.outside;

import static hornbook.outside.Yard.cautions;
import static hornbook.outside.Yard.has;
import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is published of white line disease, thrush, corns and setting times. */
class OpenWallInTheBooksTest {
  private static FootAdvice disease(String work, int lameness, int separated) {
    return Yard.advise(
        """
        horse: {ageYears: 12, work: %s}
        feet:
          - limb: left-fore
            lameness: %d
            measures: {bearingLength: 130 mm, width: 126 mm, toeToWidest: 62 mm}
            wall:
              - {side: medial, from: 0 mm, to: %d mm, state: separated, height: 20 mm, moist: true}
              - {side: medial, from: %3$d mm, to: 170 mm, state: sound, thickness: 9 mm, moist: false}
              - {side: lateral, from: 0 mm, to: 170 mm, state: sound, thickness: 9 mm, moist: false}
        """
            .formatted(work, lameness, separated));
  }

  /** Equine Clinical Medicine, 2nd ed.: undermined wall off, barefoot and open to the air. */
  @Test
  void a_resting_horse_is_left_open() {
    FootAdvice foot = disease("rest", 0, 30);
    assertThat(foot.firstChoice()).map(one -> one.id()).contains("leave-open");
    assertThat(foot.technique("prosthetic-wall").verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(foot.technique("cast-wrap").verdict()).isEqualTo(Verdict.RULED_OUT);
  }

  /** O'Grady and Burns 2019: a horse in work is shod with the place left open. */
  @Test
  void a_horse_in_work_is_shod_on_the_sound_wall() {
    FootAdvice foot = disease("sport", 0, 30);
    assertThat(foot.firstChoice()).map(one -> one.id()).contains("nail-on-adapted");
    assertThat(cautions(foot)).contains("recheck-ten-days", "months-to-regrow");
  }

  /** O'Grady and Burns 2019: lame horses and large defects are imaged by a vet first. */
  @ParameterizedTest
  @CsvSource({"2, 30", "0, 130"})
  void lame_or_wide_is_imaged_first(int lameness, int separated) {
    FootAdvice foot = disease("rest", lameness, separated);
    assertThat(foot.urgency()).contains(Urgency.DAYS);
    assertThat(foot.technique("leave-open").verdict()).isEqualTo(Verdict.WITH_VET);
    assertThat(foot.firstChoice()).isEmpty();
  }

  /** Equine Clinical Medicine, 2nd ed.: wall beside a large defect may spread; heart bar. */
  @Test
  void a_wide_loss_brings_up_the_heart_bar_with_a_vet() {
    assertThat(has(disease("sport", 0, 130).support("heart-bar"), Bearing.FOR)).isTrue();
    assertThat(disease("sport", 0, 130).support("heart-bar").verdict()).isEqualTo(Verdict.WITH_VET);
    assertThat(has(disease("sport", 0, 30).support("heart-bar"), Bearing.FOR)).isFalse();
  }

  /** Reeks 1906, ch. IX B.2: soundness is no guide to how far a seedy toe runs up. */
  @Test
  void a_sound_horse_with_a_dry_separation_is_probed() {
    FootAdvice foot =
        Yard.advise(
            "feet: [{limb: left-fore, lameness: 0, wall: [{side: medial, from: 0 mm, to: 30 mm,"
                + " state: separated, moist: false}]}]");
    assertThat(cautions(foot)).contains("find-the-end");
    assertThat(foot.findings()).noneMatch(one -> one.id().equals("active-white-line-disease"));
  }

  /** USDA 1916, Holcombe, corns: seat clear, bar shoe, heels covered; lame: vet within days. */
  @Test
  void a_corn_is_freed_of_pressure() {
    FootAdvice foot =
        Yard.advise(
            "feet: [{limb: left-fore, lameness: 2, onset: gradual, signs: {stain: corn-seat,"
                + " testerPain: [heel], frogState: healthy}}]");
    assertThat(cautions(foot)).contains("seat-of-corn");
    assertThat(has(foot.support("straight-bar"), Bearing.FOR)).isTrue();
    assertThat(has(foot.support("longer-branch"), Bearing.FOR)).isTrue();
    assertThat(foot.urgency()).contains(Urgency.DAYS);
  }

  /**
   * USDA 1916, Holcombe, corns: sound when newly shod, then lame: the seat of corn is asked for.
   */
  @Test
  void lame_again_three_weeks_after_shoeing_asks_for_the_seat_of_corn() {
    FootAdvice foot = Yard.after(21, "ageYears: 9", ", lameness: 1, signs: {testerPain: [heel]}");
    assertThat(foot.questions()).anyMatch(one -> one.field().equals("feet[0].signs.stain"));
  }

  /** Reeks 1906, ch. IX B.4 and B.5: thrush of contracted feet comes back until they open. */
  @Test
  void thrush_in_contracted_heels_is_more_than_thrush() {
    FootAdvice foot =
        Yard.advise(
            "feet: [{limb: left-fore, measures: {frogLength: 60 mm, frogWidth: 40 mm},"
                + " signs: {frogState: thrush}}]");
    assertThat(cautions(foot)).contains("thrush", "thrush-of-contraction");
  }

  /** Koh 2015: 534 s at 20 C, 381 s at 28 C; Ayzenberg 2018: 7.0 min at 9 C, 3.5 min at 36 C. */
  @ParameterizedTest
  @CsvSource({
    "8, cold-slows-acrylic cold-slows-tape",
    "9, cold-slows-acrylic",
    "20, ''",
    "28, ''",
    "29, heat-hastens-acrylic",
    "37, heat-hastens-acrylic heat-hastens-tape"
  })
  void outside_the_published_temperatures_the_times_do_not_hold(int air, String expected) {
    FootAdvice foot =
        Yard.advise(
            """
            horse: {ageYears: 12, work: sport}
            visit: {airTemperature: %d C}
            feet:
              - limb: left-fore
                measures: {bearingLength: 130 mm, width: 126 mm, toeToWidest: 62 mm}
                signs: {drainage: none, livingTissue: hidden}
                wall:
                  - {side: medial, from: 0 mm, to: 170 mm, state: sound, thickness: 4 mm, moist: false}
                  - {side: lateral, from: 0 mm, to: 170 mm, state: sound, thickness: 4 mm, moist: false}
            kit: {adhesive: acrylic}
            """
                .formatted(air));
    assertThat(cautions(foot).stream().filter(id -> id.matches("(cold|heat)-(slows|hastens)-.*")))
        .containsExactlyInAnyOrder(expected.isEmpty() ? new String[0] : expected.split(" "));
  }
}
