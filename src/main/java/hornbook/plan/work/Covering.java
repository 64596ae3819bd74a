package hornbook.plan.work;

import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.foot.number.Unknown;
import hornbook.foot.wall.WallSurvey;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.Covered;
import hornbook.plan.sheet.HeelsFree;
import hornbook.plan.sheet.SheetDraft;
import java.util.ArrayList;
import java.util.List;

/** Where a job covers the wall, by the same limits the sheet names in words. */
public final class Covering {
  private static final double AS_HIGH_AS_MAY_BE = Double.POSITIVE_INFINITY;

  private final SheetDraft draft;
  private final List<Covered> covered = new ArrayList<>();

  private Covering(SheetDraft draft) {
    this.draft = draft;
  }

  public static List<Covered> of(SheetDraft draft) {
    Covering covering = new Covering(draft);
    switch (draft.technique()) {
      case CAST_WRAP -> covering.allRound();
      case PROSTHETIC_WALL -> covering.losses();
      case GLUE_ON -> covering.bond();
      case COME_BACK,
          DRAW_NAIL,
          DRY_BANDAGE,
          POULTICE,
          LEAVE_UNSHOD,
          LEAVE_OPEN,
          NAIL_ON,
          NAIL_ON_ADAPTED -> {
        // nothing is covered
      }
    }
    return List.copyOf(covering.covered);
  }

  private void allRound() {
    WallSurvey wall = draft.readings().wall();
    for (Side side : Side.values()) {
      double edge =
          wall != null
              ? (side == Side.MEDIAL ? wall.medial() : wall.lateral()).edge()
              : draft.readings().outline() == null
                  ? Unknown.NUMBER
                  : draft.readings().outline().edgeLength();
      add(side, 0, edge, AS_HIGH_AS_MAY_BE);
    }
  }

  /** Each loss, and so far on to sound horn at each end; across the toe where it comes so near. */
  private void losses() {
    double lap = draft.limit("lap").value();
    for (WallStretch lost : new WallStretches(draft).lost()) {
      double height = Unknown.or(lost.height());
      double from = lost.from() - lap;
      add(lost.side(), Math.max(0, from), ahead(lost.to() + lap), height);
      if (from < 0) {
        Side other = lost.side() == Side.MEDIAL ? Side.LATERAL : Side.MEDIAL;
        add(other, 0, -from, height);
      }
    }
  }

  /** Sound wall ahead of the heels, as high as the bond is drawn up its outside. */
  private void bond() {
    double lip = draft.limit("glue.lip").value();
    for (WallStretch sound : new WallStretches(draft).sound()) {
      add(sound.side(), sound.from(), ahead(sound.to()), lip);
    }
  }

  /** No further back than where the heels begin, which have to move. */
  private double ahead(double to) {
    Figure free = HeelsFree.from(draft);
    return free.known() ? Math.min(to, free.value()) : to;
  }

  private void add(Side side, double from, double to, double height) {
    if (to > from && !Unknown.is(height)) {
      covered.add(new Covered(side, from, to, height));
    }
  }
}
