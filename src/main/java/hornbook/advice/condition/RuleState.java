package hornbook.advice.condition;

import hornbook.advice.fact.Truth;
import hornbook.rulebook.RuleEntry;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How a rule stands on a foot, condition by condition. */
public record RuleState(RuleEntry rule, List<ConditionState> conditions) {
  public Truth truth() {
    Truth all = Truth.TRUE;
    for (ConditionState condition : conditions) {
      all = all.and(condition.truth());
    }
    return all;
  }

  /** The first condition that does not hold; where none fails, the first that is unknown. */
  public Optional<ConditionState> obstacle() {
    return first(Truth.FALSE).or(() -> first(Truth.UNKNOWN));
  }

  /** The paths that would settle the rule, where only what was not looked at keeps it silent. */
  public Collection<String> unseen() {
    if (truth() != Truth.UNKNOWN) {
      return List.of();
    }
    Set<String> unseen = new LinkedHashSet<>();
    for (ConditionState condition : conditions) {
      unseen.addAll(condition.unseen());
    }
    return unseen;
  }

  private Optional<ConditionState> first(Truth truth) {
    return conditions.stream().filter(condition -> condition.truth() == truth).findFirst();
  }
}
