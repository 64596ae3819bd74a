package hornbook.study.confidence;

import hornbook.study.confidence.Confidence.Retake;
import hornbook.study.measure.Measurement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which measures turn the advice: of runs that turned, how much turns back when one measure is put
 * to what was noted.
 */
final class Attribution {
  private static final int MOST = 3;

  /** A measure that explains less decides nothing. */
  private static final double LEAST = 0.05;

  private final double[] explained;
  private final List<Map<String, Integer>> turnedBack = new ArrayList<>();
  private int turns;

  Attribution(int measurements) {
    explained = new double[measurements];
    for (int at = 0; at < measurements; at++) {
      turnedBack.add(new LinkedHashMap<>());
    }
  }

  void turn() {
    turns++;
  }

  /** Of what turned in a run, this much turned back with one measure. */
  void add(int measurement, double share, Iterable<String> back) {
    explained[measurement] += share;
    back.forEach(id -> turnedBack.get(measurement).merge(id, 1, Integer::sum));
  }

  void add(Attribution other) {
    turns += other.turns;
    for (int at = 0; at < explained.length; at++) {
      explained[at] += other.explained[at];
      Map<String, Integer> own = turnedBack.get(at);
      other.turnedBack.get(at).forEach((id, count) -> own.merge(id, count, Integer::sum));
    }
  }

  /** The measures that explain the most, the first first. */
  List<Retake> retake(List<Measurement> measurements) {
    List<Retake> all = new ArrayList<>();
    for (int at = 0; at < explained.length; at++) {
      double share = turns == 0 ? 0 : explained[at] / turns;
      if (share >= LEAST) {
        all.add(new Retake(measurements.get(at), share, most(turnedBack.get(at))));
      }
    }
    all.sort(Comparator.comparing(Retake::explains).reversed());
    return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
  }

  private static List<String> most(Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .sorted(
            Map.Entry.<String, Integer>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST)
        .map(Map.Entry::getKey)
        .toList();
  }
}
