package hornbook.report.usual;

import hornbook.advice.FootAdvice;
import hornbook.advice.MeasureGiven;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Reading;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The few measurements that the verdicts on the techniques rest on. */
public final class DecidingMeasures {
  private static final int MOST = 3;

  private DecidingMeasures() {}

  public static List<MeasureGiven> of(FootAdvice foot) {
    Set<String> cited = new LinkedHashSet<>();
    foot.firstChoice().ifPresent(first -> cite(first, Bearing.FOR, cited));
    foot.firstChoice().ifPresent(first -> cite(first, Bearing.AGAINST, cited));
    for (OptionAdvice one : foot.techniques()) {
      if (one.verdict() == Verdict.RULED_OUT) {
        cite(one, Bearing.RULES_OUT, cited);
      } else if (one.verdict() == Verdict.WORKABLE) {
        cite(one, Bearing.AGAINST, cited);
      }
    }
    List<MeasureGiven> deciding = new ArrayList<>();
    for (String what : cited) {
      for (MeasureGiven measure : foot.measures()) {
        if (measure.reading().what().equals(what) && deciding.size() < MOST) {
          deciding.add(measure);
        }
      }
    }
    return deciding;
  }

  private static void cite(OptionAdvice judged, Bearing bearing, Set<String> cited) {
    for (ReasonGiven reason : judged.reasons()) {
      if (reason.bearing() == bearing) {
        for (CitedFact fact : reason.because()) {
          if (fact instanceof Reading reading) {
            cited.add(reading.what());
          }
        }
      }
    }
  }
}
