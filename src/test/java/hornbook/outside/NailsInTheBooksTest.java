package hornbook.outside;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where, how high and how many: Adams on nails in the United States Department of Agriculture's
 * Special Report of 1916, compared with the advice.
 */
class NailsInTheBooksTest {
  private static final String FORE = "measures: {bearingLength: 130, width: 126, toeToWidest: 65}";
  private static final String HIND = "measures: {bearingLength: 130, width: 120, toeToWidest: 86}";

  /** Fitting, nailing: clenches at most an inch and five eighths above the shoe. */
  @ParameterizedTest
  @CsvSource({"25, false", "41, false", "48, true"})
  void clenches_sit_at_most_41_mm_up(int height, boolean tooHigh) {
    FootAdvice foot =
        Yard.advise(
            "feet: [{limb: left-fore, lameness: 0, measures: {nailExitHeight: %d}}]"
                .formatted(height));
    assertThat(citing(foot, "nails.exit.most").toList().isEmpty()).isNotEqualTo(tooHigh);
    if (tooHigh) {
      assertThat(citing(foot, "nails.exit.most"))
          .allMatch(says -> says.contains("lower, in a level line"));
    }
  }

  /** The shoe, nail holes: a fore foot is nailed in its front half only. */
  @Test
  void a_fore_foot_takes_no_nail_behind_its_middle() {
    assertThat(sites(sound("left-fore", FORE, 95, 150))).isZero();
    assertThat(sites(sound("left-fore", FORE, 20, 85))).isPositive();
  }

  /** The shoe, nail holes: a hind foot may be nailed in its front two thirds. */
  @Test
  void a_hind_foot_takes_nails_behind_its_middle() {
    assertThat(sites(sound("right-hind", HIND, 82, 100))).isPositive();
    assertThat(sites(sound("right-hind", HIND, 120, 150))).isZero();
  }

  /** The shoe, nail holes: three in each branch of a medium shoe are enough. */
  @ParameterizedTest
  @CsvSource({"85, false", "56, true"})
  void three_nails_a_branch_hold_a_medium_shoe(int soundTo, boolean few) {
    FootAdvice foot = sound("left-fore", FORE, 0, soundTo);
    assertThat(sites(foot)).isEqualTo(few ? 2 : 3);
    assertThat(citing(foot, "nails.branch.usual").anyMatch(says -> says.contains("are usual")))
        .isEqualTo(few);
  }

  private static FootAdvice sound(String limb, String measures, int from, int to) {
    String side =
        """
        {side: %1$s, from: 0, to: %2$d, state: separated, height: 30},
        {side: %1$s, from: %2$d, to: %3$d, state: sound, thickness: 10},
        {side: %1$s, from: %3$d, to: 172, state: separated, height: 30}""";
    String front = from == 0 ? side.substring(side.indexOf('\n') + 1) : side;
    String wall =
        front.formatted("medial", from, to) + ",\n" + front.formatted("lateral", from, to);
    return Yard.advise(
        "feet: [{limb: %s, lameness: 0, shoeing: nailed, %s, wall: [%s]}]"
            .formatted(limb, measures, wall.replace("\n", " ")));
  }

  /** Nails that find sound wall on the weaker branch. */
  private static double sites(FootAdvice foot) {
    Reading reading = foot.sheet().readings().get("nail-sites-weaker-branch");
    assertThat(reading.exact()).isTrue();
    return reading.low();
  }

  /** What is said on nailing with this limit in hand. */
  private static Stream<String> citing(FootAdvice foot, String limit) {
    return foot.technique("nail-on").reasons().stream()
        .filter(
            reason ->
                reason.because().stream()
                    .anyMatch(fact -> fact instanceof Limit one && one.id().equals(limit)))
        .map(reason -> reason.says().template());
  }
}
