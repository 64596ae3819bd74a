package hornbook.study.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.Median;
import org.apache.commons.statistics.descriptive.Variance;
import org.junit.jupiter.api.Test;

/** The numbers on a class, against worked examples in print and against another library. */
class ReliabilityTest {
  /** Ten students, ten items: Wuensch, East Carolina University, "The Kuder-Richardson 20". */
  private static final double[][] WUENSCH =
      rows(
          "1111110110",
          "1011011101",
          "1111011001",
          "0010001000",
          "0000010010",
          "1110111111",
          "1101110111",
          "1111111101",
          "0101111101",
          "1101101110");

  /** Ten students, ten items: "Reliability coefficient using the KR-20 and 21", result 0.42. */
  private static final double[][] HANDOUT =
      rows(
          "1100110011",
          "0010110100",
          "1111001111",
          "0101101101",
          "1100111011",
          "1111111011",
          "1000011001",
          "1100111101",
          "1101100001",
          "0000110001");

  private static double[][] rows(String... rows) {
    return Arrays.stream(rows)
        .map(row -> row.chars().mapToDouble(digit -> digit - '0').toArray())
        .toArray(double[][]::new);
  }

  @Test
  void kr20_is_that_of_two_worked_examples_in_print() {
    double pq = .21 + .21 + .24 + .21 + .24 + .16 + .21 + .21 + .25 + .24;
    assertThat(Reliability.kr20(WUENSCH)).isCloseTo(10 / 9.0 * (1 - pq / 5.84), within(1e-12));
    assertThat(Reliability.kr20(HANDOUT)).isCloseTo(0.42, within(0.005));
  }

  /** Wuensch: "the KR20 is simply Cronbach's alpha where the scores are all 0's and 1's". */
  @Test
  void alpha_is_kr20_where_points_are_right_or_wrong() {
    assertThat(Reliability.alpha(WUENSCH)).isCloseTo(Reliability.kr20(WUENSCH), within(1e-12));
    assertThat(Reliability.alpha(HANDOUT)).isCloseTo(Reliability.kr20(HANDOUT), within(1e-12));
  }

  /**
   * Ten guests and three questions: Bobbitt, "How to Calculate Cronbach's Alpha in Python", 2021,
   * where another library gives 0.7734375.
   */
  @Test
  void alpha_is_that_of_a_worked_example_with_marks_between() {
    double[][] guests = {
      {1, 1, 1}, {2, 1, 1}, {2, 1, 2}, {3, 2, 1}, {2, 3, 2},
      {2, 3, 3}, {3, 2, 3}, {3, 3, 3}, {2, 3, 2}, {3, 3, 3}
    };
    assertThat(Reliability.alpha(guests)).isCloseTo(0.7734375, within(1e-12));
  }

  /** KR-20 by the variance of Apache Commons Statistics, put into its formula by hand. */
  @Test
  void kr20_is_that_of_another_librarys_variance() {
    for (double[][] scores : new double[][][] {WUENSCH, HANDOUT}) {
      double[] totals =
          Arrays.stream(scores).mapToDouble(row -> Arrays.stream(row).sum()).toArray();
      double pq = 0;
      for (int point = 0; point < 10; point++) {
        double p = Mean.of(Reliability.column(scores, point)).getAsDouble();
        pq += p * (1 - p);
      }
      double variance = Variance.of(totals).setBiased(true).getAsDouble();
      assertThat(Reliability.kr20(scores)).isCloseTo(10 / 9.0 * (1 - pq / variance), within(1e-12));
    }
  }

  /** The variances of Apache Commons Statistics, put into the formula by hand. */
  @Test
  void alpha_of_any_marks_is_that_of_another_librarys_variances() {
    Random random = new Random(20);
    for (int round = 0; round < 50; round++) {
      double[][] scores = new double[2 + random.nextInt(30)][2 + random.nextInt(10)];
      for (double[] row : scores) {
        Arrays.setAll(row, point -> random.nextInt(9) / 2.0);
      }
      int points = scores[0].length;
      double[] totals =
          Arrays.stream(scores).mapToDouble(row -> Arrays.stream(row).sum()).toArray();
      double sum = 0;
      for (int point = 0; point < points; point++) {
        sum += Variance.of(Reliability.column(scores, point)).getAsDouble();
      }
      double total = Variance.of(totals).getAsDouble();
      if (total > 0) {
        assertThat(Reliability.alpha(scores))
            .isCloseTo(points / (points - 1.0) * (1 - sum / total), within(1e-9));
      }
      assertThat(Reliability.median(totals))
          .isCloseTo(Median.withDefaults().evaluate(totals), within(1e-12));
    }
  }

  /** The example of SciPy's documentation of {@code scipy.stats.pointbiserialr}. */
  @Test
  void the_point_biserial_correlation_is_that_of_scipys_example() {
    double[] won = {0, 0, 0, 1, 1, 1, 1};
    double[] rest = {0, 1, 2, 3, 4, 5, 6};
    assertThat(Reliability.correlation(won, rest)).isCloseTo(0.8660254037844386, within(1e-12));
  }

  /** {@code scipy.stats.pointbiserialr} 1.17.1 on each item and the rest of the totals. */
  @Test
  void discrimination_is_what_scipy_makes_of_the_same_class() {
    double[] scipy = SCIPY;
    for (int point = 0; point < scipy.length; point++) {
      assertThat(Reliability.discrimination(WUENSCH, point)).isCloseTo(scipy[point], within(1e-9));
    }
  }

  private static final double[] SCIPY = {
    0.7058891543857989,
    0.705889154385799,
    -1.6278315640413388e-17,
    0.47358919921934467,
    0.5838742081211421,
    0.28614654455582783,
    -0.02744450955464412,
    0.705889154385799,
    -0.12361284651454937,
    0.47586686726680055
  };

  @Test
  void what_cannot_be_computed_is_empty() {
    double[][] one = {{1, 0, 1}};
    double[][] alike = {{1, 0, 1}, {1, 0, 1}, {1, 0, 1}};
    assertThat(Reliability.kr20(one)).isNull();
    assertThat(Reliability.alpha(one)).isNull();
    assertThat(Reliability.discrimination(one, 0)).isNull();
    assertThat(Reliability.kr20(alike)).isNull();
    assertThat(Reliability.alpha(alike)).isNull();
    assertThat(Reliability.discrimination(alike, 1)).isNull();
    assertThat(Reliability.kr20(new double[][] {{1}, {0}})).isNull();
  }
}
