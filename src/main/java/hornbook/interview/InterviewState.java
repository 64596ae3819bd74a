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
record InterviewState(Assessment known, Set<String> passed, WallMapping mapping, String list) {
  InterviewState {
    passed = Set.copyOf(passed);
  }

  InterviewState with(Assessment changed) {
    return new InterviewState(changed, passed, mapping, list);
  }

  boolean passedOver(String path) {
    return passed.contains(InterviewPaths.named(known, path));
  }

  InterviewState passing(String path) {
    Set<String> more = new LinkedHashSet<>(passed);
    more.add(InterviewPaths.named(known, path));
    return new InterviewState(known, more, mapping, list);
  }

  InterviewState mapping(WallMapping now) {
    return new InterviewState(known, passed, now, list);
  }

  InterviewState inList(String now) {
    return new InterviewState(known, passed, mapping, now);
  }
}
