package hornbook.study.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** How far two markers agree, against worked examples in print. */
class KappaTest {
  /**
   * Two dermatologists and 88 patients: the agreement study in the SAS/STAT documentation of PROC
   * FREQ. Kappa 0.3449, standard error 0.0724, 95 % limits 0.2030 and 0.4868.
   */
  private static final double[][] SKIN = {
    {10, 4, 1, 0}, {5, 10, 12, 2}, {2, 4, 12, 5}, {0, 2, 6, 13}
  };

  @Test
  void it_is_that_of_the_two_dermatologists() {
    Kappa kappa = Kappa.of(SKIN);
    assertThat(kappa.compared()).isEqualTo(88);
    assertThat(kappa.kappa()).isCloseTo(0.3449, within(5e-5));
    assertThat(kappa.error()).isCloseTo(0.0724, within(5e-5));
    assertThat(kappa.low()).isCloseTo(0.2030, within(5e-5));
    assertThat(kappa.high()).isCloseTo(0.4868, within(5e-5));
  }

  /** Fleiss, Cohen and Everitt 1969, 200 subjects: kappa .429, variance .002885. */
  @Test
  void it_is_that_of_the_paper_the_error_comes_from() {
    Kappa kappa = Kappa.of(new double[][] {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}});
    assertThat(kappa.kappa()).isCloseTo(.429, within(5e-4));
    assertThat(kappa.error() * kappa.error()).isCloseTo(.002885, within(5e-7));
  }

  /** {@code cohens_kappa} of statsmodels 0.15.0 on the same two tables. */
  @Test
  void it_is_that_of_another_library_to_the_last_digits() {
    Kappa skin = Kappa.of(SKIN);
    assertThat(skin.kappa()).isCloseTo(0.3448753462603878, within(1e-12));
    assertThat(skin.error()).isCloseTo(0.07239668737198354, within(1e-12));
    assertThat(skin.low()).isCloseTo(0.20298044641129429, within(1e-12));
    assertThat(skin.high()).isCloseTo(0.4867702461094813, within(1e-12));
    Kappa paper = Kappa.of(new double[][] {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}});
    assertThat(paper.kappa()).isCloseTo(0.4285714285714285, within(1e-12));
    assertThat(paper.low()).isCloseTo(0.32329979345440496, within(1e-12));
    assertThat(paper.high()).isCloseTo(0.533843063688452, within(1e-12));
  }

  @Test
  void lists_of_decisions_give_the_same_as_their_table() {
    List<String> one = new ArrayList<>();
    List<String> other = new ArrayList<>();
    for (int i = 0; i < SKIN.length; i++) {
      for (int j = 0; j < SKIN.length; j++) {
        for (int count = 0; count < SKIN[i][j]; count++) {
          one.add("kind " + i);
          other.add("kind " + j);
        }
      }
    }
    assertThat(Kappa.of(one, other).kappa()).isCloseTo(Kappa.of(SKIN).kappa(), within(1e-12));
    assertThat(Kappa.of(one, other).error()).isCloseTo(Kappa.of(SKIN).error(), within(1e-12));
  }

  @Test
  void the_interval_is_that_of_the_normal_distribution_of_another_library() {
    Kappa kappa = Kappa.of(SKIN);
    double normal = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.975);
    assertThat((kappa.kappa() - kappa.low()) / kappa.error()).isCloseTo(normal, within(1e-12));
  }

  @Test
  void where_chance_alone_would_always_agree_it_is_empty() {
    assertThat(Kappa.of(List.of("all", "all"), List.of("all", "all")).kappa()).isNull();
    assertThat(Kappa.of(List.of(), List.of()).kappa()).isNull();
    assertThat(Kappa.of(List.of("all", "none"), List.of("all", "none")).kappa()).isEqualTo(1);
  }
}
