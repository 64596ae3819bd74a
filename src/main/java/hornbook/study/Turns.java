package hornbook.study;

import hornbook.advice.Standing;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** What differs between two ways a foot stands. */
final class Turns {
  private Turns() {}

  /** The techniques, supports and dangers on which the two differ. */
  static Set<String> between(Standing one, Standing other) {
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
