package hornbook.study.marking;

import java.util.ArrayList;
import java.util.List;

/**
 * How far two markers agree beyond chance, with its 95 % interval.
 *
 * @param kappa null where chance alone would agree always, or there is nothing to compare
 * @param error the standard error in large samples
 */
public record Kappa(int compared, Double kappa, Double error, Double low, Double high) {
  /** Two-sided 95 % of the normal distribution. */
  private static final double NORMAL = 1.959963984540054;

  /**
   * Of two lists of decisions on the same things, in the same order (Cohen, Educational and
   * Psychological Measurement 20, 1960; the error by Fleiss, Cohen and Everitt, Psychological
   * Bulletin 72, 1969).
   */
  public static Kappa of(List<String> one, List<String> other) {
    List<String> words = new ArrayList<>(one);
    words.addAll(other);
    List<String> kinds = words.stream().distinct().sorted().toList();
    double[][] counts = new double[kinds.size()][kinds.size()];
    for (int at = 0; at < one.size(); at++) {
      counts[kinds.indexOf(one.get(at))][kinds.indexOf(other.get(at))]++;
    }
    return of(counts);
  }

  /** Of a table of counts: rows the one, columns the other. */
  public static Kappa of(double[][] counts) {
    int kinds = counts.length;
    double all = 0;
    double[] rows = new double[kinds];
    double[] columns = new double[kinds];
    double agreed = 0;
    for (int i = 0; i < kinds; i++) {
      for (int j = 0; j < kinds; j++) {
        all += counts[i][j];
        rows[i] += counts[i][j];
        columns[j] += counts[i][j];
      }
      agreed += counts[i][i];
    }
    double chance = 0;
    for (int i = 0; i < kinds; i++) {
      chance += rows[i] / all * columns[i] / all;
    }
    if (all == 0 || 1 - chance < 1e-12) {
      return new Kappa((int) all, null, null, null, null);
    }
    double kappa = (agreed / all - chance) / (1 - chance);
    double error = error(counts, rows, columns, all, chance, kappa);
    return new Kappa(
        (int) all, kappa, error, kappa - NORMAL * error, Math.min(1, kappa + NORMAL * error));
  }

  private static double error(
      double[][] counts, double[] rows, double[] columns, double all, double chance, double kappa) {
    double same = 0;
    double different = 0;
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < rows.length; j++) {
        double share = counts[i][j] / all;
        if (i == j) {
          same += share * Math.pow(1 - (rows[i] + columns[i]) / all * (1 - kappa), 2);
        } else {
          different += share * Math.pow((columns[i] + rows[j]) / all, 2);
        }
      }
    }
    double rest = kappa - chance * (1 - kappa);
    double variance = same + Math.pow(1 - kappa, 2) * different - rest * rest;
    return Math.sqrt(Math.max(0, variance) / all) / (1 - chance);
  }
}
