package hornbook.study.marking;

import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.correlation.PearsonsCorrelation;

/**
 * How far the points of a test hang together. A row is a learner, a column a point. What cannot be
 * computed is null.
 */
public final class Reliability {
  private Reliability() {}

  /**
   * KR-20 of points that are right (1) or wrong (0): {@code k/(k-1) (1 - sum pq / variance)}, with
   * the variance of the totals over all learners (Kuder and Richardson, Psychometrika 2, 1937).
   */
  public static Double kr20(double[][] scores) {
    double pq = 0;
    for (int point = 0; scores.length > 0 && point < scores[0].length; point++) {
      double p = StatUtils.mean(column(scores, point));
      pq += p * (1 - p);
    }
    return consistency(scores, pq, StatUtils.populationVariance(totals(scores)));
  }

  /**
   * Alpha of points with any marks: {@code k/(k-1) (1 - sum of variances / variance)} (Cronbach,
   * Psychometrika 16, 1951).
   */
  public static Double alpha(double[][] scores) {
    double variances = 0;
    for (int point = 0; scores.length > 0 && point < scores[0].length; point++) {
      variances += StatUtils.variance(column(scores, point));
    }
    return consistency(scores, variances, StatUtils.variance(totals(scores)));
  }

  private static Double consistency(double[][] scores, double ofPoints, double ofTotals) {
    if (scores.length < 2 || scores[0].length < 2 || !(ofTotals > 1e-12)) {
      return null;
    }
    double k = scores[0].length;
    return k / (k - 1) * (1 - ofPoints / ofTotals);
  }

  /**
   * The correlation of a point with the sum of all others: point-biserial where a point is right or
   * wrong, Pearson's where it has marks between; the formula is the same.
   */
  public static Double discrimination(double[][] scores, int point) {
    if (scores.length < 2) {
      return null;
    }
    double[] own = column(scores, point);
    double[] rest = totals(scores);
    for (int row = 0; row < rest.length; row++) {
      rest[row] -= own[row];
    }
    return correlation(own, rest);
  }

  /** Pearson's correlation; null where one of the two has no spread. */
  public static Double correlation(double[] one, double[] other) {
    boolean spread =
        one.length > 1 && StatUtils.variance(one) > 1e-12 && StatUtils.variance(other) > 1e-12;
    return spread ? new PearsonsCorrelation().correlation(one, other) : null;
  }

  public static double mean(double[] values) {
    return StatUtils.mean(values);
  }

  public static double median(double[] values) {
    return StatUtils.percentile(values, 50);
  }

  static double[] column(double[][] scores, int point) {
    double[] column = new double[scores.length];
    for (int row = 0; row < column.length; row++) {
      column[row] = scores[row][point];
    }
    return column;
  }

  private static double[] totals(double[][] scores) {
    double[] totals = new double[scores.length];
    for (int row = 0; row < totals.length; row++) {
      totals[row] = StatUtils.sum(scores[row]);
    }
    return totals;
  }
}
