package hornbook.study.confidence;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.study.measure.Measurement;
import hornbook.study.measure.MeasuringErrors;
import hornbook.study.measure.Tool;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Measures a horse again, on paper: every number drawn about the one noted. A run is known by its
 * seed and number alone, whatever thread draws it and whichever runs are drawn beside it.
 */
final class MeasurementSimulation {
  /** Keeps stretches apart that errors would push into one another, in mm. */
  private static final double LEAST_STRETCH = 1e-3;

  private final Assessment noted;
  private final List<Measurement> measurements;
  private final MeasuringErrors errors;
  private final List<int[]> edges;

  MeasurementSimulation(Assessment noted, List<Measurement> measurements, MeasuringErrors errors) {
    this.noted = noted;
    this.measurements = measurements;
    this.errors = errors;
    this.edges = edges(measurements);
  }

  /** The places in the list of those that divide one edge, from the toe back. */
  private static List<int[]> edges(List<Measurement> measurements) {
    Map<Measurement.Edge, List<Integer>> byEdge = new LinkedHashMap<>();
    for (int at = 0; at < measurements.size(); at++) {
      if (measurements.get(at).edge() != null) {
        byEdge.computeIfAbsent(measurements.get(at).edge(), edge -> new ArrayList<>()).add(at);
      }
    }
    List<int[]> edges = new ArrayList<>();
    for (List<Integer> places : byEdge.values()) {
      edges.add(
          places.stream()
              .sorted((one, other) -> byValue(measurements, one, other))
              .mapToInt(Integer::intValue)
              .toArray());
    }
    return edges;
  }

  private static int byValue(List<Measurement> measurements, int one, int other) {
    return Double.compare(measurements.get(one).value(), measurements.get(other).value());
  }

  /** The values of one run, in the order of the measurements. */
  double[] draw(long seed, long run) {
    SplitMix64 random = new SplitMix64(mixed(seed, run));
    ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
    double[] tools = new double[Tool.values().length];
    for (int tool = 0; tool < tools.length; tool++) {
      tools[tool] = normal.sample();
    }
    double[] drawn = new double[measurements.size()];
    for (int at = 0; at < drawn.length; at++) {
      Measurement one = measurements.get(at);
      double deviate = errors.joined(tools[one.tool().ordinal()], normal.sample());
      drawn[at] = one.within(one.value() + errors.deviation(one) * deviate);
    }
    return drawn;
  }

  /** Far apart for neighbouring runs, which the generator by itself would not be. */
  private static long mixed(long seed, long run) {
    return new SplitMix64(seed ^ new SplitMix64(run).nextLong()).nextLong();
  }

  /** The assessment with these values in place of those noted. */
  Assessment with(double[] drawn) {
    double[] values = drawn.clone();
    edges.forEach(edge -> keepApart(values, edge));
    Assessment changed = noted;
    for (int at = 0; at < values.length; at++) {
      changed = measurements.get(at).with(changed, values[at]);
    }
    return possible(changed);
  }

  /** Places on an edge stay in their order, whatever the tape says of each. */
  private static void keepApart(double[] values, int[] edge) {
    double[] sorted = new double[edge.length];
    for (int at = 0; at < edge.length; at++) {
      sorted[at] = values[edge[at]];
    }
    Arrays.sort(sorted);
    double least = LEAST_STRETCH;
    for (int at = 0; at < edge.length; at++) {
      values[edge[at]] = Math.max(least, sorted[at]);
      least = values[edge[at]] + LEAST_STRETCH;
    }
  }

  /** The widest part cannot lie behind the heel. */
  private static Assessment possible(Assessment assessment) {
    Assessment changed = assessment;
    for (int foot = 0; foot < assessment.feet().size(); foot++) {
      Foot one = assessment.feet().get(foot);
      Double widest = one.measures().toeToWidest();
      Double bearing = one.measures().bearingLength();
      if (widest != null && bearing != null && widest > bearing) {
        String path = "feet[" + foot + "].measures.toeToWidest";
        changed = AssessmentEdit.of(path).with(changed, bearing);
      }
    }
    return changed;
  }
}
