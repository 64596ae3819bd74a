package hornbook.interview;

import hornbook.assessment.Assessment;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Where an interview stands.
 *
 * @param known what has been answered, and what was in the file before
 * @param passed paths of what was asked and not looked at, not to be asked again
 * @param mapping the map of a wall in hand, or null
 * @param list the list whose rows are in hand, such as {@code feet[0].cracks}, or null
 */
record State(Assessment known, Set<String> passed, Mapping mapping, String list) {
  State {
    passed = Set.copyOf(passed);
  }

  State with(Assessment changed) {
    return new State(changed, passed, mapping, list);
  }

  boolean passedOver(String path) {
    return passed.contains(Paths.named(known, path));
  }

  State passing(String path) {
    Set<String> more = new LinkedHashSet<>(passed);
    more.add(Paths.named(known, path));
    return new State(known, more, mapping, list);
  }

  State mapping(Mapping now) {
    return new State(known, passed, now, list);
  }

  State inList(String now) {
    return new State(known, passed, mapping, now);
  }
}
