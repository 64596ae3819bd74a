package hornbook.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits worked out from printed figures, worked out here once more from the figures alone. */
class NumbersInPrintTest {
  private static final double INCH = 25.4;

  /** Hunting 1895: nails 1 to 1 1/2 inch apart, so half of that on each side of the toe. */
  @Test
  void the_first_nail_stands_half_a_spacing_from_the_middle_of_the_toe() {
    assertThat(value("nails.toe-clearance")).isBetween(INCH / 2, 1.5 * INCH / 2 + 1);
  }

  /** USDA 1916, clips: half circles as high as the shoe is thick; Lungwitz: about 11 mm thick. */
  @Test
  void a_clip_is_a_half_circle_as_high_as_the_shoe() {
    assertThat(value("clip.width")).isBetween(2 * 11.0, 2 * 12.7);
  }

  /** Ross and Dyson, ch. 28: nails leave the wall 1 to 2 cm above the shoe. */
  @Test
  void a_low_loss_lies_below_the_lowest_clench() {
    assertThat(value("loss.tall")).isEqualTo(10);
    assertThat(value("loss.tall")).isLessThanOrEqualTo(value("nails.exit.least"));
    assertThat(value("prosthetic.height.most")).isEqualTo(20);
  }

  /** Lungwitz 1913: a third of an inch a month; Fleming 1869, p. 647: five weeks at the most. */
  @Test
  void the_most_a_trim_is_reckoned_at_is_five_weeks_of_growth() {
    double grown = INCH / 3 * 35 / (365.25 / 12);
    assertThat(value("trim.most")).isCloseTo(grown, within(0.5));
  }

  /** Kolstrung and others 2012: 2.1 mm a week, about 13 mm in six; the tape errs by 2 mm. */
  @Test
  void growth_of_a_week_is_the_least_a_tape_can_tell() {
    assertThat(value("bare.wait.least") * 2.1).isCloseTo(value("error.length"), within(0.2));
  }

  /** Ayzenberg and others 2018: 5.0 minutes at 22 C, a fifth either way. */
  @ParameterizedTest
  @CsvSource({"tape.nail-least, 4.0", "tape.nail-most, 6.0"})
  void tape_takes_a_nail_once_it_is_set(String limit, double minutes) {
    assertThat(value(limit)).isCloseTo(minutes, within(0.01));
    assertThat(value("set.spread")).isEqualTo(20);
    assertThat(value("tape.middle.set")).isEqualTo(5.0);
  }

  /** Cardarelli, Materials Handbook, as quoted: polyurethane 1050 to 1250 kg/m3. */
  @Test
  void set_urethane_is_as_dense_as_polyurethane() {
    assertThat(value("density.urethane")).isBetween(1.05, 1.25);
  }

  /** Hunting 1895, preparation of the foot: a shoe rests on sound horn alone. */
  @ParameterizedTest
  @CsvSource({
    "broken-away, wall-lost, wall.missing.most",
    "separated, wall-separated, wall.separated.most"
  })
  void a_short_stretch_that_is_not_sound_is_not_whole(String state, String finding, String limit) {
    FootAdvice foot =
        Yard.advise(
            """
            horse: {ageYears: 8, work: light}
            feet:
              - limb: left-fore
                lameness: 0
                measures: {bearingLength: 130 mm, width: 124 mm, toeToWidest: 65 mm}
                wall:
                  - {side: medial, from: 0 mm, to: 171 mm, state: sound, thickness: 9 mm}
                  - {side: lateral, from: 0 mm, to: 80 mm, state: sound, thickness: 9 mm}
                  - {side: lateral, from: 80 mm, to: 84 mm, state: %s, height: 12 mm, moist: false}
                  - {side: lateral, from: 84 mm, to: 171 mm, state: sound, thickness: 9 mm}
            """
                .formatted(state));
    assertThat(foot.findings()).extracting(FindingGiven::id).contains(finding);
    assertThat(value(limit)).isZero();
  }

  /** In the hind foot no study gives these two: they are quoted, and say so. */
  @ParameterizedTest
  @CsvSource({"heels.under-run, 5", "heels.low, 3"})
  void what_is_said_of_hind_heels_is_quoted(String id, double value) {
    List<Limit> hind =
        Shipped.BOOK.limits().stream()
            .filter(one -> one.id().equals(id) && one.basis() == Basis.QUOTED)
            .toList();
    assertThat(hind).isNotEmpty().allMatch(one -> one.value() == value);
  }

  private static double value(String id) {
    return Shipped.BOOK.limits().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow()
        .value();
  }
}
