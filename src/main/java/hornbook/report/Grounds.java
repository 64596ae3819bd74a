package hornbook.report;

import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The ground under numbers that are computed with limits of the rule base, and not measured. */
final class Grounds {
  private static final List<String> OUTLINE = List.of("outline.");
  private static final List<String> NAILS =
      List.of("outline.", "nails.spacing", "nails.toe-clearance", "nails.end-clearance", "wall.");
  private static final Map<ReadingKind, List<String>> LIMITS = limits();

  private Grounds() {}

  private static Map<ReadingKind, List<String>> limits() {
    Map<ReadingKind, List<String>> limits = new EnumMap<>(ReadingKind.class);
    for (ReadingKind kind : ReadingKind.values()) {
      limits.put(
          kind,
          switch (kind) {
            case TOE_LENGTH_OVER_USUAL -> List.of("toe.usual-");
            case HOOF_LOAD_INDEX -> List.of("foot.small");
            case SOUND_SHARE,
                SOUND_SHARE_MEDIAL,
                SOUND_SHARE_LATERAL,
                MISSING_SHARE,
                PARTED_SHARE,
                MISSING_OR_PARTED_SHARE,
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
            default -> List.of();
          });
    }
    return limits;
  }

  /** The weakest ground among the limits a number was computed with; published where with none. */
  static Basis of(String reading, Map<String, Limit> limits) {
    Basis basis = Basis.PUBLISHED;
    for (Limit limit : limits.values()) {
      if (behind(reading).stream().anyMatch(limit.id()::startsWith)) {
        basis = basis.weaker(limit.basis());
      }
    }
    return basis;
  }

  /** How the ids of the limits begin that a number is computed with. */
  static List<String> behind(String reading) {
    for (Map.Entry<ReadingKind, List<String>> one : LIMITS.entrySet()) {
      if (one.getKey().id().equals(reading)) {
        return one.getValue();
      }
    }
    return List.of();
  }
}
