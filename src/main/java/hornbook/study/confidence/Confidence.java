package hornbook.study.confidence;

import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Limit;
import hornbook.study.measure.Measurement;
import hornbook.study.measure.MeasuringErrors;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How steady the advice on a foot is under measuring error: the horse measured again many times, on
 * paper. Shares are parts of one.
 *
 * @param foot the advice on what was noted
 * @param steady the share of runs whose verdicts and calls for the vet are those of what was noted
 * @param firstChoice the share in which each technique is first choice; {@code none} where none is
 * @param techniques the share of each verdict, by technique
 * @param supports the share of each verdict, by support
 * @param referrals the share in which the vet is called for each danger that any run met
 * @param findings the share in which each name was found that any run found
 * @param retake the measures that decide the most, at most three
 * @param measurements everything that was measured anew
 */
public record Confidence(
    FootAdvice foot,
    int runs,
    long seed,
    double steady,
    Map<String, Double> firstChoice,
    Map<String, Map<Verdict, Double>> techniques,
    Map<String, Map<Verdict, Double>> supports,
    Map<String, Double> referrals,
    Map<String, Double> findings,
    List<Retake> retake,
    List<Measurement> measurements,
    MeasuringErrors errors) {

  /** Stands among first choices for there being none. */
  public static final String NONE = "none";

  /** The measuring errors that were drawn from, each once. */
  public Set<Limit> errorsDrawn() {
    return measurements.stream()
        .map(Measurement::error)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * A measure worth taking again.
   *
   * @param explains the share of the turns of the advice that would not have come about had this
   *     one measure been just as noted
   * @param decides what it turned most, at most three techniques, supports or dangers
   */
  public record Retake(Measurement measurement, double explains, List<String> decides) {}
}
