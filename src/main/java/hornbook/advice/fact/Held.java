package hornbook.advice.fact;

import hornbook.assessment.Limb;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.reserve.Reserves;

/**
 * What a call for the vet on one foot holds back on another foot of the horse.
 *
 * @param rule the rule that calls the vet
 * @param from the foot it calls the vet for
 */
public record Held(RuleEntry rule, Limb from) {
  public Reserves reserves() {
    return rule.text().reserves();
  }
}
