package hornbook.report.drawing;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Foot;
import hornbook.foot.FootLimits;
import hornbook.foot.FootReadings;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.NailSites;
import hornbook.foot.wall.SideSurvey;
import hornbook.foot.wall.WallSurvey;
import java.util.List;

/**
 * What a drawing of a foot shows: the outline of its ground edge, the mapped wall on it and the
 * places for nails.
 *
 * @param outline null where bearing length or width was not measured
 * @param wall as the trim leaves it; null where it was not mapped
 * @param nails null where they cannot be found for want of one or the other
 */
public record FootMap(Foot foot, GroundOutline outline, WallSurvey wall, NailSites nails) {
  public static FootMap of(Advice advice, FootAdvice given) {
    Foot foot = advice.assessment().feet().get(given.index());
    FootLimits limits = given.sheet().computing();
    FootReadings worked = FootReadings.of(advice.assessment(), foot, limits);
    return new FootMap(foot, worked.outline(), worked.wall(), worked.nails());
  }

  /** The sides that were mapped, the inner first; none where the wall was not. */
  List<SideSurvey> sides() {
    return wall == null ? List.of() : List.of(wall.medial(), wall.lateral());
  }

  /** The mapped pieces of the inner side, then those of the outer, as the legend numbers them. */
  List<MappedPiece> pieces() {
    return sides().stream().flatMap(side -> side.pieces().stream()).toList();
  }
}
