package hornbook.foot.wall;

import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallState;
import hornbook.assessment.word.CrackPlace;
import hornbook.foot.number.EdgeInterval;
import hornbook.foot.number.Interval;
import java.util.List;

/**
 * Where nails may go on a foot: sound wall only, thick enough, clear of the ends of the sound run,
 * not under a crack, and between the toe limit and the rearmost limit. Unmapped wall, or sound wall
 * of unknown thickness, may take a nail but does not certainly.
 */
public record NailSites(NailBranch medial, NailBranch lateral) {

  /**
   * Finds the sites.
   *
   * @param cracks null when not looked for: then sound wall is taken at its word
   * @param rearmost in mm along the edge from the middle of the toe
   */
  public static NailSites of(
      WallSurvey wall, List<WallCrack> cracks, NailingLimits limits, double rearmost) {
    return new NailSites(
        branch(wall.medial(), wall.lateral(), cracks, limits, rearmost),
        branch(wall.lateral(), wall.medial(), cracks, limits, rearmost));
  }

  public Interval both() {
    return medial.count().plus(lateral.count());
  }

  /** The count of the branch that takes fewer. */
  public Interval weaker() {
    return medial.count().min(lateral.count());
  }

  private static NailBranch branch(
      SideSurvey side,
      SideSurvey across,
      List<WallCrack> cracks,
      NailingLimits limits,
      double rearmost) {
    List<EdgeInterval> certain = SoundRuns.windows(side, across, limits, rearmost, false);
    List<EdgeInterval> possible = SoundRuns.windows(side, across, limits, rearmost, true);
    return new NailBranch(
        side.side(), clear(certain, side, cracks, limits), possible, limits.spacing());
  }

  /**
   * The windows less every part of the wall in which a crack was found that the map does not place:
   * it may lie anywhere there. A mapped cracked stretch places it.
   */
  private static List<EdgeInterval> clear(
      List<EdgeInterval> windows, SideSurvey side, List<WallCrack> cracks, NailingLimits limits) {
    List<EdgeInterval> left = windows;
    for (int i = 0; cracks != null && i < cracks.size(); i++) {
      WallCrack crack = cracks.get(i);
      if (touches(crack, side.side())) {
        double from = side.edge() * limits.regions().from(crack.place());
        double to = side.edge() * limits.regions().to(crack.place());
        if (!placed(side, from, to)) {
          left = EdgeInterval.without(left, from, to);
        }
      }
    }
    return left;
  }

  private static boolean touches(WallCrack crack, Side side) {
    return crack.place() != CrackPlace.BAR && (crack.side() == null || crack.side() == side);
  }

  private static boolean placed(SideSurvey side, double from, double to) {
    for (MappedPiece piece : side.pieces()) {
      boolean there = piece.from() < to && piece.to() > from;
      if (there && piece.stretch().state() == WallState.CRACKED) {
        return true;
      }
    }
    return false;
  }
}
