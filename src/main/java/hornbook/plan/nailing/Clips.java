package hornbook.plan.nailing;

import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.word.CrackPlace;
import hornbook.foot.number.Unknown;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.NailBranch;
import hornbook.foot.wall.SideSurvey;
import hornbook.foot.wall.WallGroup;
import hornbook.foot.wall.WallSurvey;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.PlannedClip;
import hornbook.plan.sheet.SheetDraft;
import java.util.ArrayList;
import java.util.List;

/**
 * Where clips go: one at the toe of a fore foot, one on each side of a hind foot or of a toe that
 * is cracked or gone; on sound wall only, and where they cost the fewest nails.
 */
final class Clips {
  private static final double STEP = 1;

  private final SheetDraft draft;
  private final WallSurvey wall;
  private final Figure width;

  Clips(SheetDraft draft) {
    this.draft = draft;
    this.wall = draft.readings().wall();
    this.width = width(draft);
  }

  /** As wide as the shoe is thick, so many times; the usual width where that is not known. */
  static Figure width(SheetDraft draft) {
    Figure thick = draft.given().shoeThickness();
    if (!thick.known()) {
      return draft.limit("clip.width");
    }
    Figure times = draft.times("clip.times");
    return Figure.reckoned(
        "width of a clip",
        times.value() * thick.value(),
        "mm",
        "shoe {thick} x {times}",
        FormulaParts.of("thick", thick).and("times", times));
  }

  /**
   * The clips for a foot.
   *
   * @param medial the inner branch and
   * @param lateral the outer branch before any clip
   * @param wanted nails wanted in a branch
   */
  List<PlannedClip> places(NailBranch medial, NailBranch lateral, int wanted) {
    List<PlannedClip> clips = new ArrayList<>();
    if (draft.assessed().limb().fore() && toeTakesOne()) {
      clips.add(new PlannedClip(null, 0, width.value()));
    } else {
      side(wall.medial(), medial, wanted, clips);
      side(wall.lateral(), lateral, wanted, clips);
    }
    return clips;
  }

  private boolean toeTakesOne() {
    return !toeCracked()
        && sound(wall.medial(), 0, width.value() / 2)
        && sound(wall.lateral(), 0, width.value() / 2);
  }

  private boolean toeCracked() {
    List<WallCrack> cracks = draft.assessed().cracks();
    return cracks != null && cracks.stream().anyMatch(crack -> crack.place() == CrackPlace.TOE);
  }

  private void side(SideSurvey side, NailBranch branch, int wanted, List<PlannedClip> clips) {
    double from = side.edge() * draft.readings().limits().nailing().regions().toeEnd();
    double best = Unknown.NUMBER;
    double half = width.value() / 2;
    int most = -1;
    for (double at = from; at <= draft.readings().rearmostNail(); at += STEP) {
      if (sound(side, at - half, at + half) && !cracked(side, at)) {
        NailBranch left = NailRow.without(branch, at - half, at + half);
        int nails = Math.min(wanted, left.positions().size());
        if (nails > most) {
          most = nails;
          best = at;
        }
      }
    }
    if (most >= 0) {
      clips.add(new PlannedClip(side.side(), best, width.value()));
    }
  }

  /** Whether the map shows sound wall all the way from one place to another. */
  private static boolean sound(SideSurvey side, double from, double to) {
    double reached = Math.max(0, from);
    for (MappedPiece piece : side.pieces()) {
      if (piece.group() == WallGroup.SOUND && piece.from() <= reached) {
        reached = Math.max(reached, piece.to());
      }
    }
    return reached >= to;
  }

  /** Whether a crack that the map does not place may lie there. */
  private boolean cracked(SideSurvey side, double at) {
    List<WallCrack> cracks = draft.assessed().cracks();
    return cracks != null && cracks.stream().anyMatch(crack -> mayLie(crack, side, at));
  }

  private boolean mayLie(WallCrack crack, SideSurvey side, double at) {
    boolean here = crack.side() == null || crack.side() == side.side();
    return here
        && crack.place() != CrackPlace.BAR
        && draft.readings().limits().nailing().regions().holds(crack.place(), at / side.edge());
  }

  /** The branch of a side with every clip on it, and any at the toe, taken out. */
  static NailBranch clear(NailBranch branch, Side side, List<PlannedClip> clips) {
    NailBranch left = branch;
    for (PlannedClip clip : clips) {
      if (clip.side() == null || clip.side() == side) {
        left = NailRow.without(left, clip.at() - clip.width() / 2, clip.at() + clip.width() / 2);
      }
    }
    return left;
  }
}
