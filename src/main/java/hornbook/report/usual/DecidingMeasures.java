package hornbook.report.usual;

import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.MeasureGiven;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Verdict;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The few measurements that the verdicts rest on, each with the limit that decided; what only has
 * to be there at all tells nothing more as a number.
 */
public final class DecidingMeasures {
  private static final int MOST = 3;

  private final FootAdvice foot;
  private final Map<String, Limit> cited = new LinkedHashMap<>();
  private final Set<String> followed = new HashSet<>();

  private DecidingMeasures(FootAdvice foot) {
    this.foot = foot;
  }

  /**
   * A measurement and what it was compared with.
   *
   * @param limit null where the rule has none in the unit of the measurement
   */
  public record Deciding(MeasureGiven measure, Limit limit) {}

  /** First those behind the first choice, then behind what is ruled out, then behind supports. */
  public static List<Deciding> of(FootAdvice foot) {
    DecidingMeasures all = new DecidingMeasures(foot);
    all.citeTechniques();
    all.citeSupports();
    return all.given();
  }

  private void citeTechniques() {
    foot.firstChoice().ifPresent(first -> cite(first, Bearing.FOR));
    foot.firstChoice().ifPresent(first -> cite(first, Bearing.AGAINST));
    for (OptionAdvice one : foot.techniques()) {
      if (one.verdict() == Verdict.RULED_OUT) {
        cite(one, Bearing.RULES_OUT);
      } else if (one.verdict() == Verdict.WORKABLE) {
        cite(one, Bearing.AGAINST);
      }
    }
  }

  private void citeSupports() {
    for (OptionAdvice one : foot.supports()) {
      if (one.verdict() == Verdict.RULED_OUT) {
        cite(one, Bearing.RULES_OUT);
      } else if (one.verdict() == Verdict.WORKABLE) {
        cite(one, Bearing.FOR);
      }
    }
  }

  private List<Deciding> given() {
    List<Deciding> deciding = new ArrayList<>();
    for (Map.Entry<String, Limit> one : cited.entrySet()) {
      for (MeasureGiven measure : foot.measures()) {
        if (measure.reading().what().equals(one.getKey()) && deciding.size() < MOST) {
          deciding.add(new Deciding(measure, one.getValue()));
        }
      }
    }
    return deciding;
  }

  private void cite(OptionAdvice judged, Bearing bearing) {
    for (ReasonGiven reason : judged.reasons()) {
      if (reason.bearing() == bearing) {
        cite(reason.because());
      }
    }
  }

  private void cite(List<CitedFact> because) {
    for (CitedFact fact : because) {
      if (fact instanceof Reading reading) {
        Limit limit = limit(reading, because);
        if (limit == null || limit.value() != 0) {
          cited.putIfAbsent(reading.what(), limit);
        }
      } else if (fact instanceof Finding finding && followed.add(finding.what())) {
        foot.findings().stream()
            .filter(one -> one.id().equals(finding.what()))
            .map(FindingGiven::because)
            .forEach(this::cite);
      }
    }
  }

  private static Limit limit(Reading reading, List<CitedFact> because) {
    String unit = Subjects.unit(reading.what());
    for (CitedFact fact : because) {
      if (fact instanceof Limit limit && limit.unit().equals(unit)) {
        return limit;
      }
    }
    return null;
  }
}
