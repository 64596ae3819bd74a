package hornbook.report.advice;

import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The ground under numbers that are computed with limits of the rule base, and not measured. */
final class LimitProvenance {
  private static final List<String> OUTLINE = List.of("outline.");
  private static final List<String> NAILS =
      List.of("outline.", "nails.spacing", "nails.toe-clearance", "nails.end-clearance", "wall.");
  private static final Map<String, List<String>> LIMITS = limits();

  private LimitProvenance() {}

  private static Map<String, List<String>> limits() {
    Map<String, List<String>> limits = new HashMap<>();
    for (ReadingKind kind : ReadingKind.values()) {
      limits.put(
          kind.id(),
          switch (kind) {
            case TOE_LENGTH_OVER_USUAL -> List.of("toe.usual-");
            case HOOF_LOAD_INDEX -> List.of("foot.small");
            case SOUND_SHARE,
                SOUND_SHARE_MEDIAL,
                SOUND_SHARE_LATERAL,
                MISSING_SHARE,
                SEPARATED_SHARE,
                MISSING_OR_SEPARATED_SHARE,
                TALL_LOSS_SHARE,
                LOSS_BEHIND,
                STRONG_SHARE,
                STRONG_SHARE_MEDIAL,
                STRONG_SHARE_LATERAL,
                LONGEST_DEFECT,
                BEARING_SHARE,
                BEARING_PRESSURE_RATIO,
                THINNEST_SOUND_WALL ->
                OUTLINE;
            case NAIL_SITES_MEDIAL,
                NAIL_SITES_LATERAL,
                NAIL_SITES_WEAKER_BRANCH,
                NAIL_SITES_BOTH,
                NAIL_SITES_WEAKER_BRANCH_IF_BEHIND ->
                NAILS;
            case WEEKS_TO_NAILABLE -> List.of("growth.", "nails.exit.usual");
            case HORN_A_MONTH -> List.of("own-growth.");
            default -> List.of();
          });
    }
    return limits;
  }

  /** The weakest ground among the limits a number was computed with; published where with none. */
  static Basis of(String reading, Map<String, Limit> limits) {
    List<String> behind = behind(reading);
    Basis basis = Basis.PUBLISHED;
    if (!behind.isEmpty()) {
      for (Limit limit : limits.values()) {
        boolean used = behind.stream().anyMatch(limit.id()::startsWith);
        basis = used ? basis.weaker(limit.basis()) : basis;
      }
    }
    return basis;
  }

  /** How the ids of the limits begin that a number is computed with. */
  static List<String> behind(String reading) {
    return LIMITS.getOrDefault(reading, List.of());
  }
}
