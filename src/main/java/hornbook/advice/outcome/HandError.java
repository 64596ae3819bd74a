package hornbook.advice.outcome;

import hornbook.advice.Closeness;
import hornbook.advice.fact.FactSheet;
import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What measuring again by hand could turn over: a length or an angle within its error of the limit,
 * and a share of the wall that one length error, over the mapped length in mm, would bring across.
 */
final class HandError {
  /** The shares of the wall, each with the side it is of; none for the whole edge. */
  private static final Map<String, Optional<Side>> SHARES =
      Map.ofEntries(
          whole(ReadingKind.SOUND_SHARE),
          of(ReadingKind.SOUND_SHARE_MEDIAL, Side.MEDIAL),
          of(ReadingKind.SOUND_SHARE_LATERAL, Side.LATERAL),
          whole(ReadingKind.MISSING_SHARE),
          whole(ReadingKind.SEPARATED_SHARE),
          whole(ReadingKind.MISSING_OR_SEPARATED_SHARE),
          whole(ReadingKind.TALL_LOSS_SHARE),
          whole(ReadingKind.TRIMMED_LOSS_SHARE),
          whole(ReadingKind.STRONG_SHARE),
          of(ReadingKind.STRONG_SHARE_MEDIAL, Side.MEDIAL),
          of(ReadingKind.STRONG_SHARE_LATERAL, Side.LATERAL));

  private final FactSheet sheet;
  private final List<WallStretch> wall;

  /**
   * @param wall the wall as mapped, or null
   */
  HandError(FactSheet sheet, List<WallStretch> wall) {
    this.sheet = sheet;
    this.wall = wall == null ? List.of() : wall;
  }

  private static Map.Entry<String, Optional<Side>> whole(ReadingKind kind) {
    return Map.entry(kind.id(), Optional.empty());
  }

  private static Map.Entry<String, Optional<Side>> of(ReadingKind kind, Side side) {
    return Map.entry(kind.id(), Optional.of(side));
  }

  boolean reaches(Reading reading, Limit limit) {
    if (Closeness.close(sheet, reading, limit)) {
      return true;
    }
    Limit error = sheet.limits().get("error.length");
    Optional<Side> side = SHARES.get(reading.what());
    if (error == null || side == null || !limit.unit().equals("%") || !reading.exact()) {
      return false;
    }
    double away = Math.abs(reading.low() - limit.value()) / 100 * mapped(side);
    return away <= error.value();
  }

  private double mapped(Optional<Side> side) {
    return wall.stream()
        .filter(one -> one.from() != null && one.to() != null)
        .filter(one -> side.isEmpty() || one.side() == side.get())
        .mapToDouble(one -> one.to() - one.from())
        .sum();
  }
}
