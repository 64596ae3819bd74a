package hornbook.advice;

import hornbook.rulebook.Shown;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;
import java.util.List;

/**
 * A call for the vet: how soon, why, and what to do until then.
 *
 * @param reserves what it holds back, with what less urgent calls over the same danger hold back
 */
public record ReferralGiven(
    String id,
    Urgency urgency,
    Statement says,
    Statement meanwhile,
    Reserves reserves,
    String rule,
    List<CitedFact> because,
    List<String> sources,
    Basis basis,
    Shown shown) {
  /** The same call that holds back what another does as well. */
  ReferralGiven holdingBackAlso(ReferralGiven other) {
    return new ReferralGiven(
        id,
        urgency,
        says,
        meanwhile,
        reserves.and(other.reserves),
        rule,
        because,
        sources,
        basis,
        shown);
  }
}
