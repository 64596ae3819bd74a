package hornbook.study.explain;

import hornbook.advice.condition.ConditionState;
import hornbook.advice.fact.Truth;
import hornbook.assessment.field.FieldValue;
import hornbook.rulebook.Condition;
import hornbook.rulebook.fact.Limit;
import java.util.List;

/**
 * One condition of a rule on a foot, followed down to the fields of the file.
 *
 * @param asked the limit the condition asks for where it does not hold for such a foot, else that
 *     the reading is compared with, or null
 * @param noted the fields it rests on with what stands in them, null for what was not looked at
 * @param off how far the reading lies from the limit, in its own unit; null where that cannot be
 *     told
 * @param makers the rules that make the finding it asks for; empty for other conditions
 */
public record ChainLink(
    ConditionState state, Limit asked, List<FieldValue> noted, Double off, List<RuleChain> makers) {

  public Condition condition() {
    return state.condition();
  }

  public Truth truth() {
    return state.truth();
  }

  /** Of the rules that make the finding those that did; where none did, all that could. */
  public List<RuleChain> decidingMakers() {
    List<RuleChain> fired = makers.stream().filter(RuleChain::fired).toList();
    return fired.isEmpty() ? makers : fired;
  }
}
