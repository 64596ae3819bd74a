package hornbook.advice.condition;

import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import java.util.List;

/**
 * How one condition of a rule stands on a foot.
 *
 * @param cited the facts that make it hold, or the nearest that do not; empty where nothing was
 *     seen
 * @param limit the limit a reading is compared with, or null
 * @param unseen the paths that would settle it, where it is unknown
 */
public record ConditionState(
    Condition condition,
    Truth truth,
    List<? extends CitedFact> cited,
    Limit limit,
    List<String> unseen) {}
