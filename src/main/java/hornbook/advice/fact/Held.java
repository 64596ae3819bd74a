package hornbook.advice.fact;

import hornbook.assessment.Limb;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;

/**
 * What a call for the vet on one foot holds back on another foot of the horse.
 *
 * @param rule the rule that calls the vet
 * @param from the foot it calls the vet for
 */
public record Held(RuleEntry rule, Limb from) {
  /** Whether the vet is called for now. */
  public boolean now() {
    return rule.calls(Urgency.NOW);
  }

  /** What the vet is called for. */
  public String danger() {
    return refers().id();
  }

  public Urgency urgency() {
    return refers().urgency();
  }

  private RuleConclusion.Refers refers() {
    return (RuleConclusion.Refers) rule.outcome();
  }

  public Reserves reserves() {
    return rule.text().reserves();
  }
}
