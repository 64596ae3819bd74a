package hornbook.study.critique;

import hornbook.advice.CautionGiven;
import hornbook.advice.FindingGiven;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Statement;
import hornbook.advice.condition.RuleState;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import java.util.List;

/**
 * A rule that bears on a point.
 *
 * @param says what it says of this foot; null for a rule that is silent
 * @param because the facts it rests on
 * @param bearing which way it bears on a technique or support, or null
 * @param silent how its conditions stand where it did not fire, else null
 */
public record Evidence(
    String rule,
    Statement says,
    List<CitedFact> because,
    Bearing bearing,
    List<String> sources,
    Basis basis,
    RuleState silent) {
  static Evidence of(ReasonGiven reason) {
    return new Evidence(
        reason.rule(),
        reason.says(),
        reason.because(),
        reason.bearing(),
        reason.sources(),
        reason.basis(),
        null);
  }

  static Evidence of(ReferralGiven given) {
    return new Evidence(
        given.rule(), given.says(), given.because(), null, given.sources(), given.basis(), null);
  }

  static Evidence of(FindingGiven given, Basis basis) {
    return new Evidence(
        given.rule(), given.says(), given.because(), null, given.sources(), basis, null);
  }

  static Evidence of(CautionGiven given) {
    return new Evidence(
        given.rule(), given.says(), List.of(), null, given.sources(), given.basis(), null);
  }

  /** Of a rule that did not fire on the foot. */
  static Evidence silent(RuleState state) {
    return new Evidence(
        state.rule().id(),
        null,
        List.of(),
        null,
        state.rule().text().sources(),
        state.rule().basis(),
        state);
  }

  public boolean fired() {
    return silent == null;
  }
}
