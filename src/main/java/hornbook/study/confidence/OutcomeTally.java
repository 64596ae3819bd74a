package hornbook.study.confidence;

import hornbook.advice.Verdict;
import hornbook.advice.outcome.Outcome;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/** Counts how often a foot stood how. Its size does not hang on how much was counted. */
final class OutcomeTally {
  private int runs;
  private int steady;
  private final Map<String, Integer> firstChoice = new TreeMap<>();
  private final Map<String, Map<Verdict, Integer>> techniques = new LinkedHashMap<>();
  private final Map<String, Map<Verdict, Integer>> supports = new LinkedHashMap<>();
  private final Map<String, Integer> referrals = new TreeMap<>();
  private final Map<String, Integer> findings = new TreeMap<>();

  void count(Outcome standing, boolean asNoted) {
    runs++;
    steady += asNoted ? 1 : 0;
    firstChoice.merge(standing.firstChoice().orElse(Confidence.NONE), 1, Integer::sum);
    standing.techniques().forEach((id, verdict) -> count(techniques, id, verdict, 1));
    standing.supports().forEach((id, verdict) -> count(supports, id, verdict, 1));
    standing.referrals().keySet().forEach(id -> referrals.merge(id, 1, Integer::sum));
    standing.findings().forEach(id -> findings.merge(id, 1, Integer::sum));
  }

  void add(OutcomeTally other) {
    runs += other.runs;
    steady += other.steady;
    add(firstChoice, other.firstChoice);
    add(referrals, other.referrals);
    add(findings, other.findings);
    other.techniques.forEach((id, all) -> all.forEach((v, n) -> count(techniques, id, v, n)));
    other.supports.forEach((id, all) -> all.forEach((v, n) -> count(supports, id, v, n)));
  }

  private static void add(Map<String, Integer> to, Map<String, Integer> from) {
    from.forEach((id, count) -> to.merge(id, count, Integer::sum));
  }

  private static void count(
      Map<String, Map<Verdict, Integer>> all, String id, Verdict verdict, int count) {
    all.computeIfAbsent(id, key -> new EnumMap<>(Verdict.class))
        .merge(verdict, count, Integer::sum);
  }

  double steady() {
    return share(steady);
  }

  Map<String, Double> firstChoice() {
    return shares(firstChoice);
  }

  Map<String, Double> referrals() {
    return shares(referrals);
  }

  Map<String, Double> findings() {
    return shares(findings);
  }

  Map<String, Map<Verdict, Double>> techniques() {
    return verdicts(techniques);
  }

  Map<String, Map<Verdict, Double>> supports() {
    return verdicts(supports);
  }

  private Map<String, Double> shares(Map<String, Integer> counts) {
    Map<String, Double> shares = new LinkedHashMap<>();
    counts.forEach((id, count) -> shares.put(id, share(count)));
    return shares;
  }

  private Map<String, Map<Verdict, Double>> verdicts(Map<String, Map<Verdict, Integer>> counts) {
    Map<String, Map<Verdict, Double>> shares = new LinkedHashMap<>();
    counts.forEach(
        (id, all) -> {
          Map<Verdict, Double> own = new EnumMap<>(Verdict.class);
          all.forEach((verdict, count) -> own.put(verdict, share(count)));
          shares.put(id, own);
        });
    return shares;
  }

  private double share(int count) {
    return (double) count / runs;
  }
}
