package hornbook.report.words;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Parts of a whole in per cent, never rounded to none or all. */
public final class Shares {
  private static final double LEAST = 0.01;
  private static final double MOST = 0.99;

  private Shares() {}

  public static String of(double share) {
    if (share > 0 && share < LEAST) {
      return "under 1%";
    }
    if (share > MOST && share < 1) {
      return "over 99%";
    }
    return Math.round(100 * share) + "%";
  }

  /** {@code a glued shoe 78%, no shoe 22%}: the greatest first. */
  public static String line(Map<String, Double> shares) {
    return greatestFirst(shares).entrySet().stream()
        .map(share -> share.getKey() + " " + of(share.getValue()))
        .collect(Collectors.joining(", "));
  }

  public static <K> Map<K, Double> greatestFirst(Map<K, Double> shares) {
    List<Map.Entry<K, Double>> sorted =
        shares.entrySet().stream()
            .sorted(Map.Entry.<K, Double>comparingByValue(Comparator.reverseOrder()))
            .toList();
    Map<K, Double> greatest = new LinkedHashMap<>();
    sorted.forEach(share -> greatest.put(share.getKey(), share.getValue()));
    return greatest;
  }
}
