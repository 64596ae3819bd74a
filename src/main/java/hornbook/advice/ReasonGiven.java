package hornbook.advice;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import java.util.List;

/**
 * A reason that bears on a technique or a support.
 *
 * @param observed what was seen or measured, the first fact cited that is not a limit; null where a
 *     rule rests on limits alone
 * @param limit the limit it was compared with, or null
 * @param close whether the reading lies within hand measuring error of the limit
 * @param heldBack set where a call for the vet holds the technique or support back; otherwise null
 * @param basis the weakest ground among the rule and its limits
 */
public record ReasonGiven(
    Bearing bearing,
    String rule,
    Statement says,
    CitedFact observed,
    Limit limit,
    boolean close,
    List<CitedFact> because,
    List<String> sources,
    Basis basis,
    HeldBack heldBack) {}
