package hornbook.study.rulecase;

import hornbook.advice.FiredRule;
import hornbook.advice.Statement;
import hornbook.advice.Wording;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.rulebook.RuleEntry;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;

/**
 * The case of a rule, run.
 *
 * @param nearMiss the assessment after the one change that is to silence the rule
 * @param says what the rule says of the foot; null where it does not fire, as under a local
 *     practice that moved its limit
 * @param silenced whether the near-miss silences it
 */
public record FiredCase(RuleCase example, Assessment nearMiss, Statement says, boolean silenced) {

  /** Runs the first case of every rule there is, by the rule's id. */
  public static Map<String, FiredCase> all(Advisor advisor, CaseLibrary library)
      throws IOException, RuleCase.Unusable {
    Map<String, FiredCase> fired = new TreeMap<>();
    for (RuleCase one : library.rules().values()) {
      RuleEntry rule = advisor.book().rules().get(one.rule());
      if (rule != null && one.first()) {
        Assessment nearMiss = one.with(one.nearMiss());
        FiredRule firing = CaseCheck.firing(advisor, one, one.assessment());
        Statement says = firing == null ? null : Wording.says(rule, firing.conclusion().because());
        boolean silenced = CaseCheck.firing(advisor, one, nearMiss) == null;
        fired.put(one.rule(), new FiredCase(one, nearMiss, says, silenced));
      }
    }
    return fired;
  }
}
