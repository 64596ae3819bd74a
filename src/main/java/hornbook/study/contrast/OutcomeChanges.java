package hornbook.study.contrast;

import hornbook.advice.outcome.Outcome;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** What differs between two ways a foot stands. */
public final class OutcomeChanges {
  private OutcomeChanges() {}

  /** The techniques, supports and dangers on which the two differ. */
  public static Set<String> between(Outcome one, Outcome other) {
    Set<String> turned = new LinkedHashSet<>();
    add(turned, one.techniques(), other.techniques());
    add(turned, one.supports(), other.supports());
    add(turned, one.referrals(), other.referrals());
    return turned;
  }

  private static void add(Set<String> turned, Map<String, ?> one, Map<String, ?> other) {
    Set<String> all = new LinkedHashSet<>(one.keySet());
    all.addAll(other.keySet());
    for (String id : all) {
      if (!Objects.equals(one.get(id), other.get(id))) {
        turned.add(id);
      }
    }
  }
}
