package hornbook.interview;

import hornbook.advice.fact.FactSheet;
import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.FootLimits;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.GroundOutline;
import java.util.ArrayList;
import java.util.List;

/**
 * The map of a wall while it is made: inner side first, then the outer, each from the middle of the
 * toe back; of every stretch where it ends, then what it is like.
 *
 * @param foot place of the foot in the list
 * @param side the side in hand
 * @param left fields of the last stretch still to be asked, in order
 * @param edge length of a side as the outline gives it, mm; unknown when it cannot be drawn
 * @param enough share of that length at which a map is taken to reach the heel
 */
record WallMapping(int foot, Side side, List<String> left, double edge, double enough) {

  static WallMapping of(Assessment assessment, int foot, FactSheet sheet) {
    FootLimits limits = sheet.computing();
    Foot own = assessment.feet().get(foot);
    GroundOutline outline = GroundOutline.of(own.measures(), own.limb().fore(), limits.shape());
    double edge = outline == null ? Unknown.NUMBER : outline.edgeLength();
    return new WallMapping(foot, Side.MEDIAL, List.of(), edge, 1 - limits.edgeSlack());
  }

  /** Where the next stretch of this side begins: where the furthest ends. */
  double from(Assessment assessment) {
    double end = 0;
    List<WallStretch> wall = assessment.feet().get(foot).wall();
    for (WallStretch stretch : wall == null ? List.<WallStretch>of() : wall) {
      if (stretch.side() == side && stretch.to() != null) {
        end = Math.max(end, stretch.to());
      }
    }
    return end;
  }

  boolean atHeel(Assessment assessment) {
    return from(assessment) >= enough * edge;
  }

  /** With a stretch added up to there; the rest of it is asked next. */
  static List<WallStretch> added(List<WallStretch> wall, Side side, double from, double to) {
    List<WallStretch> added = wall == null ? new ArrayList<>() : new ArrayList<>(wall);
    added.add(new WallStretch(side, from, to, null, null, null, null, null, null, null));
    return added;
  }

  /** What to ask of a stretch in this state beside where it ends. */
  static List<String> details(WallState state) {
    return switch (state) {
      case SOUND, REPAIRED -> List.of("thickness");
      case FLARED -> List.of("thickness", "flare");
      case CRACKED -> List.of("height", "thickness");
      case SEPARATED -> List.of("height", "thickness", "moist", "mealy");
      case CRUMBLING -> List.of("height", "thickness", "moist");
      case BROKEN_AWAY, RESECTED -> List.of("height", "moist");
    };
  }

  WallMapping asking(List<String> fields) {
    return new WallMapping(foot, side, List.copyOf(fields), edge, enough);
  }

  WallMapping other() {
    return new WallMapping(foot, Side.LATERAL, List.of(), edge, enough);
  }

  String path() {
    return InterviewPaths.foot(foot) + "wall";
  }
}
