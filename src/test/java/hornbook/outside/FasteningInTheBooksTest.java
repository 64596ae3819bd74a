package hornbook.outside;

import static hornbook.outside.Yard.has;
import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is published of nails, glue, casts, rebuilt walls and no shoe, compared with the choice. */
class FasteningInTheBooksTest {
  private static final String CLEAN = "signs: {drainage: none, livingTissue: hidden}";

  /** A fore foot whose outer wall is broken away over a length, that high, dry. */
  private static FootAdvice broken(String horse, int from, int to, int height, String more) {
    return Yard.advise(
        """
        horse: {ageYears: 8, %s}
        feet:
          - limb: left-fore
            lameness: 0
            %s
            measures: {bearingLength: 130 mm, width: 124 mm, toeToWidest: 65 mm}
            wall:
              - {side: medial, from: 0 mm, to: 171 mm, state: sound, thickness: 9 mm}
              - {side: lateral, from: 0 mm, to: %d mm, state: sound, thickness: 9 mm}
              - {side: lateral, from: %3$d mm, to: %d mm, state: broken-away, height: %d mm, moist: false}
              - {side: lateral, from: %4$d mm, to: 171 mm, state: sound, thickness: 9 mm}
        """
            .formatted(horse, more, from, to, height));
  }

  private static String choice(FootAdvice foot) {
    return foot.firstChoice().map(OptionAdvice::id).orElse("none");
  }

  /** Lungwitz and Adams, nailing, causes of a prick: restless horse, thin or crumbling wall. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "visit: {handling: restless}\nfeet: [{limb: left-fore}]",
        "feet: [{limb: left-fore, wall: [{side: medial, from: 0, to: 30, state: crumbling}]}]",
        "feet: [{limb: left-fore, measures: {bearingLength: 130, width: 124, toeToWidest: 65},"
            + " wall: [{side: medial, from: 0, to: 171, state: sound, thickness: 4},"
            + " {side: lateral, from: 0, to: 171, state: sound, thickness: 9}]}]"
      })
  void what_makes_a_prick_likely_speaks_against_nails(String assessment) {
    assertThat(has(Yard.advise(assessment).technique("nail-on"), Bearing.AGAINST)).isTrue();
  }

  /** Reeks 1906, ch. VIII A: home sound, lame next day, one nail tender. Leaving it is given up. */
  @Test
  void a_tight_nail_is_drawn_and_nothing_is_fixed_to_the_foot() {
    FootAdvice foot =
        Yard.advise(
            """
            horse: {ageYears: 8, work: sport}
            visit: {shodDaysAgo: 1}
            feet:
              - limb: left-fore
                lameness: 2
                lameSinceShod: true
                signs: {testerPain: [nail], drainage: none, livingTissue: hidden}
            """);
    for (String technique : new String[] {"nail-on", "nail-on-adapted", "glue-on", "cast-wrap"}) {
      assertThat(foot.technique(technique).verdict()).as(technique).isEqualTo(Verdict.RULED_OUT);
    }
    assertThat(choice(foot)).isEqualTo("leave-unshod");
  }

  /** USDA 1916, the shoe: eight nails in a heavy shoe, seven accepted. */
  @ParameterizedTest
  @CsvSource({"2, false", "52, false", "60, true"})
  void a_heavy_shoe_wants_seven_or_eight_nails(int torn, boolean few) {
    FootAdvice foot =
        Yard.advise(
            """
            horse: {ageYears: 8, weight: 820 kg, work: draught}
            feet:
              - limb: left-fore
                measures: {bearingLength: 190 mm, width: 180 mm, toeToWidest: 55 mm}
                wall:
                  - {side: medial, from: 0 mm, to: 260 mm, state: sound, thickness: 12 mm}
                  - {side: lateral, from: 0 mm, to: %1$d mm, state: broken-away}
                  - {side: lateral, from: %1$d mm, to: 260 mm, state: sound, thickness: 12 mm}
            """
                .formatted(torn));
    boolean cited =
        foot.technique("nail-on").reasons().stream()
            .anyMatch(
                reason ->
                    reason.limit() != null && reason.limit().id().equals("nails.draught.usual"));
    assertThat(cited).isEqualTo(few);
  }

  /** USDA 1916, flatfoot: a broad web that bears on the wall alone. */
  @Test
  void a_flat_tender_foot_is_helped_by_a_broad_seated_shoe() {
    FootAdvice foot =
        Yard.advise(
            """
            horse: {ageYears: 8, work: rest}
            feet:
              - limb: left-fore
                measures: {bearingLength: 130 mm, width: 124 mm, toeToWidest: 65 mm}
                wall:
                  - {side: medial, from: 0 mm, to: 171 mm, state: sound, thickness: 9 mm}
                  - {side: lateral, from: 0 mm, to: 171 mm, state: sound, thickness: 9 mm}
                signs: {soleShape: flat, testerPain: [sole], drainage: none, livingTissue: hidden}
            """);
    assertThat(choice(foot)).isEqualTo("nail-on");
  }

  /** USDA 1916, shoeing necessity: in slow work on soft ground the shoe may be left off. */
  @Test
  void a_bare_horse_in_slow_work_stays_bare() {
    FootAdvice foot = broken("work: light", 140, 165, 8, "shoeing: unshod\n    lostShoe: false");
    assertThat(choice(foot)).isEqualTo("leave-unshod");
  }

  /** Stashak 7, p. 1110: glue where wall for nails is short; not for good. */
  @Test
  void a_shoe_is_glued_where_wall_for_nails_is_short() {
    assertThat(choice(broken("work: sport", 20, 68, 22, CLEAN))).isEqualTo("glue-on");
    assertThat(
            has(
                broken("work: sport", 20, 68, 22, "gluedCycles: 5\n    " + CLEAN)
                    .technique("glue-on"),
                Bearing.AGAINST))
        .isTrue();
  }

  /** WEVA congress 2008: a wall is rebuilt where its loss makes shoeing difficult. */
  @Test
  void a_wall_is_rebuilt_where_the_loss_gets_in_the_way_of_shoeing() {
    assertThat(choice(broken("work: sport", 20, 100, 32, CLEAN))).isEqualTo("prosthetic-wall");
    assertThat(broken("work: rest", 20, 100, 32, CLEAN).technique("prosthetic-wall").verdict())
        .isEqualTo(Verdict.NOT_INDICATED);
  }

  /** Stashak 7 and Yoshihara 2010: bonded heels spread less, which narrow heels can ill afford. */
  @Test
  void bonding_speaks_against_itself_on_narrow_heels() {
    FootAdvice foot =
        Yard.advise("feet: [{limb: left-fore, measures: {frogLength: 60, frogWidth: 38}}]");
    assertThat(has(foot.technique("glue-on"), Bearing.AGAINST)).isTrue();
    assertThat(has(foot.technique("nail-on"), Bearing.AGAINST)).isFalse();
  }

  /** Stashak 7: a foot cast comes off after about three weeks. */
  @ParameterizedTest
  @CsvSource({"20, false", "22, true"})
  void a_wrap_comes_off_after_three_weeks(int days, boolean off) {
    FootAdvice foot =
        Yard.advise(
            "feet: [{limb: left-fore, shoeing: wrapped, wrappedDaysAgo: %d}]".formatted(days));
    assertThat(has(foot.technique("cast-wrap"), Bearing.NEEDS)).isEqualTo(off);
  }
}
