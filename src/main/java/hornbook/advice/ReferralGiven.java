package hornbook.advice;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Cited;
import hornbook.rulebook.fact.Urgency;
import java.util.List;

/** A call for the vet: how soon, why, and what to do until then. */
public record ReferralGiven(
    String id,
    Urgency urgency,
    Says says,
    Says meanwhile,
    String rule,
    List<Cited> because,
    List<String> sources,
    Basis basis) {}
