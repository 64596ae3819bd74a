package hornbook.record;

import hornbook.assessment.Limb;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The feet of a horse over its visits. What a later entry puts right counts as that entry has it.
 *
 * @param unread entries whose assessment can no longer be read
 */
public record History(String horse, List<FootHistory> feet, List<Integer> unread) {

  /**
   * @param entries of this horse, in the order they were written
   * @param replaced numbers of the entries that a later one puts right
   * @param only the foot meant; null for all
   */
  public static History of(String horse, List<Entry> entries, Set<Integer> replaced, Limb only) {
    List<Entry> standing =
        entries.stream()
            .filter(one -> !replaced.contains(one.number()))
            .sorted(Comparator.comparing(History::day))
            .toList();
    Map<Limb, List<FootVisit>> byLimb = new EnumMap<>(Limb.class);
    List<Integer> unread = new ArrayList<>();
    for (Entry entry : standing) {
      List<FootVisit> visits = FootVisit.of(entry);
      if (visits.isEmpty()) {
        unread.add(entry.number());
      }
      for (FootVisit visit : visits) {
        if (only == null || visit.limb() == only) {
          byLimb.computeIfAbsent(visit.limb(), limb -> new ArrayList<>()).add(visit);
        }
      }
    }
    List<FootHistory> feet = new ArrayList<>();
    byLimb.forEach((limb, visits) -> feet.add(FootHistory.of(limb, visits)));
    return new History(horse, List.copyOf(feet), List.copyOf(unread));
  }

  /** The day of the visit; where it was not noted, the day it was written. */
  private static String day(Entry entry) {
    if (entry.visited() != null) {
      return entry.visited().toString();
    }
    return entry.written() == null ? "" : entry.written().toString();
  }
}
