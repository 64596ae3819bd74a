package hornbook.report.words;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The reason that tells most about a verdict. */
public final class DecidingReason {
  /** For a technique that is not the first choice: what speaks against it comes before all. */
  private static final Bearing[] WHY_NOT = {Bearing.AGAINST, Bearing.NEEDS, Bearing.FOR};

  private static final Bearing[] WHY = {Bearing.FOR};

  private final FootAdvice foot;
  private final Bearing[] workable;

  private DecidingReason(FootAdvice foot, Bearing[] workable) {
    this.foot = foot;
    this.workable = workable;
  }

  public static DecidingReason techniques(FootAdvice foot) {
    return new DecidingReason(foot, WHY_NOT);
  }

  public static DecidingReason supports(FootAdvice foot) {
    return new DecidingReason(foot, WHY);
  }

  /** The weightiest reason behind a verdict; null where nothing more is to be told of it. */
  ReasonGiven reason(OptionAdvice judged) {
    return switch (judged.verdict()) {
      case RULED_OUT -> referred(judged, first(judged, Bearing.RULES_OUT));
      case WITH_VET -> referred(judged, first(judged, Bearing.NEEDS_VET));
      case WORKABLE -> first(judged, workable);
      case FIRST_CHOICE -> first(judged, Bearing.FOR);
      case NOT_INDICATED -> null;
    };
  }

  /** Those decided by the same rule together, in the order of the first of each. */
  public Map<String, List<OptionAdvice>> byRule(List<OptionAdvice> all) {
    Map<String, List<OptionAdvice>> grouped = new LinkedHashMap<>();
    for (OptionAdvice judged : all) {
      ReasonGiven reason = reason(judged);
      String rule = reason == null ? "" : reason.rule();
      grouped.computeIfAbsent(rule, key -> new ArrayList<>()).add(judged);
    }
    return grouped;
  }

  /** While a vet is called for today, that outweighs every other reason of the same kind. */
  private ReasonGiven referred(OptionAdvice judged, ReasonGiven otherwise) {
    boolean urgent = foot.urgency().filter(u -> u.compareTo(Urgency.TODAY) <= 0).isPresent();
    if (urgent) {
      String rule = foot.referrals().get(0).rule();
      for (ReasonGiven reason : judged.reasons()) {
        boolean alike = otherwise == null || reason.bearing() == otherwise.bearing();
        if (alike && reason.rule().equals(rule)) {
          return reason;
        }
      }
    }
    return otherwise;
  }

  private static ReasonGiven first(OptionAdvice judged, Bearing... wanted) {
    for (Bearing bearing : wanted) {
      for (ReasonGiven reason : judged.reasons()) {
        if (reason.bearing() == bearing) {
          return reason;
        }
      }
    }
    return null;
  }
}
