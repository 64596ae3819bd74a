package hornbook.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Referrals that share an id speak of one danger, which is told once. */
public final class DangerMerge {
  private static final Comparator<ReferralGiven> MOST_TELLING =
      Comparator.comparing(ReferralGiven::urgency)
          .thenComparing(given -> given.because().size(), Comparator.reverseOrder())
          .thenComparing(ReferralGiven::rule);

  private DangerMerge() {}

  /**
   * The most urgent referral of each danger; of equals the one that rests on most facts; it holds
   * back what the others do as well. The most urgent come first, then by rule.
   */
  public static List<ReferralGiven> toldOnce(List<ReferralGiven> given) {
    Map<String, ReferralGiven> told = new LinkedHashMap<>();
    given.stream()
        .sorted(MOST_TELLING)
        .forEach(one -> told.merge(one.id(), one, ReferralGiven::holdingBackAlso));
    List<ReferralGiven> sorted = new ArrayList<>(told.values());
    sorted.sort(Comparator.comparing(ReferralGiven::urgency).thenComparing(ReferralGiven::rule));
    return List.copyOf(sorted);
  }
}
