package hornbook.study.confidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.Verdict;
import hornbook.assessment.Assessment;
import hornbook.rules.Shipped;
import hornbook.study.Given;
import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConfidenceTest {
  private static final int RUNS = 10_000;
  private static final int NO_THREADS_BUT_ONE = 1;

  /**
   * A measure d above its limit falls below it with probability P(Z < -d/s), from the normal
   * distribution of Apache Commons Statistics. The error of an angle is 2 degrees, two standard
   * deviations: s = 1 degree. Under 45 degrees a grown fore foot is acute, over 55 upright.
   */
  @ParameterizedTest
  @CsvSource({"45.5", "46", "46.8", "47.5", "44", "44.7"})
  void one_measure_against_one_limit_flips_as_often_as_the_normal_distribution_says(double angle) {
    double beyond = NormalDistribution.of(0, 1).cumulativeProbability(45 - angle);
    assertThat(found("{toeAngle: %s deg}".formatted(angle), "acute-foot"))
        .isCloseTo(beyond, within(3 * standardError(beyond)));
  }

  /**
   * The difference of two angles by one gauge: half the variance of each is the gauge's own and
   * falls out, so the difference has variance 2 x s2 x (1 - 1/2) = s2. Under-run heels are called
   * so from 5 degrees on.
   */
  @ParameterizedTest
  @CsvSource({"46, 42", "46, 41.5", "46, 40"})
  void what_one_gauge_shares_falls_out_of_a_difference(double toe, double heel) {
    double beyond = NormalDistribution.of(0, 1).survivalProbability(5 - (toe - heel));
    assertThat(found("{toeAngle: %s, heelAngle: %s}".formatted(toe, heel), "under-run-heels"))
        .isCloseTo(beyond, within(3 * standardError(beyond)));
  }

  /**
   * The difference of the heel bulbs is taken without its sign, so both ends of the distribution
   * count: sheared from 5 mm on (O'Grady and Castelijns 2011). Lengths err by 2 mm, s = 1 mm.
   */
  @Test
  void both_ends_count_where_the_sign_does_not() {
    NormalDistribution difference = NormalDistribution.of(4, 1);
    double beyond = difference.survivalProbability(5) + difference.cumulativeProbability(-5);
    String heels = "{medialHeelHeight: 44 mm, lateralHeelHeight: 40 mm}";
    assertThat(found(heels, "sheared-heels")).isCloseTo(beyond, within(3 * standardError(beyond)));
  }

  private static double found(String measures, String finding) {
    String foot = "horse: {ageYears: 8}\nfeet: [{limb: left-fore, measures: %s}]";
    Assessment assessment = Given.written(foot.formatted(measures)).assessment();
    return confidence(assessment, RUNS, 7, NO_THREADS_BUT_ONE)
        .findings()
        .getOrDefault(finding, 0.0);
  }

  private static double standardError(double share) {
    return Math.sqrt(share * (1 - share) / RUNS);
  }

  @Test
  void the_same_seed_gives_the_same_answer_on_any_number_of_threads() {
    Assessment assessment = Given.exercise("showjumper-torn-side");
    Confidence one = confidence(assessment, 2_000, 3, 1);
    for (int threads : new int[] {2, 3, 8}) {
      Confidence other = confidence(assessment, 2_000, 3, threads);
      assertThat(told(other)).isEqualTo(told(one));
    }
    assertThat(told(confidence(assessment, 2_000, 4, 1))).isNotEqualTo(told(one));
  }

  private static Object told(Confidence one) {
    return java.util.List.of(
        one.steady(),
        one.firstChoice(),
        one.techniques(),
        one.supports(),
        one.referrals(),
        one.findings(),
        one.retake().stream().map(r -> r.measurement().paths() + " " + r.explains()).toList());
  }

  @Test
  void shares_of_verdicts_sum_to_one_on_every_exercise() throws Exception {
    for (var file : Shipped.files(Shipped.EXERCISES)) {
      Confidence one = confidence(Given.read(file).assessment(), 251, 1, 2);
      assertThat(one.techniques()).hasSameSizeAs(Shipped.BOOK.techniques());
      assertThat(one.supports()).hasSameSizeAs(Shipped.BOOK.supports());
      one.techniques().values().forEach(ConfidenceTest::sumsToOne);
      one.supports().values().forEach(ConfidenceTest::sumsToOne);
      double choices = one.firstChoice().values().stream().mapToDouble(share -> share).sum();
      assertThat(choices).isCloseTo(1, within(1e-9));
    }
  }

  private static void sumsToOne(Map<Verdict, Double> shares) {
    double sum = shares.values().stream().mapToDouble(share -> share).sum();
    assertThat(sum).isCloseTo(1, within(1e-9));
  }

  /** Two angles an error apart from all else: the one that sits on its limit is the one to take. */
  @Test
  void the_measure_on_its_limit_is_the_one_to_take_again() {
    Assessment assessment =
        Given.written(
                """
                horse: {ageYears: 8}
                feet:
                  - limb: left-fore
                    measures: {toeAngle: 50, pasternAngle: 50, soleDepth: 10.2, frogLength: 80, frogWidth: 70}
                """)
            .assessment();
    Confidence one = confidence(assessment, 2_000, 1, 2);
    assertThat(one.steady()).isBetween(0.3, 0.7);
    assertThat(one.retake().get(0).measurement().path()).isEqualTo("feet[0].measures.soleDepth");
    assertThat(one.retake().get(0).explains()).isGreaterThan(0.9);
  }

  private static Confidence confidence(Assessment assessment, int runs, long seed, int threads) {
    return new ConfidenceAnalysis(Shipped.ADVISOR, threads)
        .of(assessment, 0, runs, seed, done -> {});
  }
}
