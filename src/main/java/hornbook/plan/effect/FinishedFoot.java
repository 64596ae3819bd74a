package hornbook.plan.effect;

import hornbook.foot.Proportions;
import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.RunningSum;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;

/** The foot with everything on. What the job leaves alone stays the measure it was. */
public final class FinishedFoot {
  private final SheetDraft draft;
  private final MeasuredFigures given;
  private final AddedDepths depths;
  private final Figure laid;
  private final Figure behind;
  private final Figure back;
  private final Figure flares;
  private final Proportions foot;

  /**
   * @param thickness laid on the front and on each side, or null
   * @param branch what the bearing is carried back by, or null
   * @param setBack how far the breakover comes back; null or unknown leaves it where it is
   */
  public FinishedFoot(
      SheetDraft draft, AddedDepths depths, Figure thickness, Figure branch, Figure setBack) {
    this.draft = draft;
    this.given = draft.given();
    this.depths = depths;
    this.laid = or(thickness, "thickness laid on");
    this.behind = or(branch, "branch behind the heels");
    boolean asIs = setBack == null || !setBack.known();
    this.back = or(asIs ? null : setBack, "breakover to come back");
    this.flares = new WallStretches(draft).flaresAtWidest();
    this.foot = Proportions.after(draft.assessed().measures(), added());
  }

  private static Figure or(Figure figure, String nothing) {
    return figure == null ? Figure.measured(nothing, 0, "mm", null) : figure;
  }

  /** What is added, along the wall and in front, behind and at the sides. */
  public AddedMaterial added() {
    AddedMaterial depth = AddedMaterial.depth(depths.toe().value(), depths.heel().value());
    double angle = SideProfile.of(draft.assessed().measures()).with(depth).toeAngle();
    double front = laid.value() == 0 ? 0 : laid.value() / Math.sin(Math.toRadians(angle));
    double narrowed = flares == null ? 0 : flares.value() / 2;
    return depth
        .withFront(laid.value())
        .withSides(laid.value() - narrowed)
        .withBehind(behind.value())
        .withSetBack(back.value() == 0 ? 0 : back.value() + front);
  }

  public FootNumbers numbers() {
    Figure toe = longer("toe length", foot.toeLength(), given.toeLength(), depths.toe());
    Figure heel = longer("heel length", foot.heelLength(), given.heelLength(), depths.heel());
    Figure angle = angle();
    Figure bearing = bearing(angle);
    Figure widest = widest(angle);
    return new FootNumbers(
        toe,
        heel,
        FootNumbers.ratio(foot, toe, heel),
        angle,
        FootNumbers.axis(foot, angle, given.pasternAngle()),
        width(),
        bearing,
        lever(widest, angle),
        FootNumbers.support(foot, bearing, widest));
  }

  private static Figure longer(String label, double value, Figure before, Figure depth) {
    return depth.value() == 0
        ? before
        : Figure.reckoned(
            label,
            value,
            "mm",
            "{before} + {depth}",
            FormulaParts.of("before", before).and("depth", depth));
  }

  private Figure angle() {
    Figure before = given.toeAngle();
    if (depths.equal()) {
      return depths.toe().value() == 0
          ? before
          : Figure.reckoned(
              before.label(),
              before.value(),
              "deg",
              "{before}: the same at toe and heels turns nothing",
              FormulaParts.of("before", before));
    }
    return Figure.reckoned(
        before.label(),
        foot.toeAngle(),
        "deg",
        "{before} + atan(d sin({before}) / ({bearing} - d cos({before}))), d = heels {heel} - toe"
            + " {toe}",
        FormulaParts.of("before", before)
            .and("bearing", given.bearingLength())
            .and("heel", depths.heel())
            .and("toe", depths.toe()));
  }

  private Figure width() {
    RunningSum sum = new RunningSum(given.width());
    if (flares != null) {
      sum.and(" - flares {flares}", "flares", flares);
    }
    if (laid.value() != 0) {
      sum.and(" + {laid} on each side", "laid", laid);
    }
    return sum.figure("width", foot.width());
  }

  private Figure bearing(Figure angle) {
    RunningSum sum = new RunningSum(given.bearingLength());
    if (!depths.equal()) {
      sum.and(" x sin({was}) / sin({is})", "was", given.toeAngle()).part("is", angle);
    }
    front(sum, angle);
    if (behind.value() != 0) {
      sum.and(" + {behind} behind", "behind", behind);
    }
    return sum.figure("bearing length", foot.bearingLength());
  }

  private Figure widest(Figure angle) {
    RunningSum sum = new RunningSum(given.toeToWidest());
    boolean deeper = depths.toe().value() != 0;
    if (!depths.equal()) {
      sum.and(" x cos({is} - {was})", "was", given.toeAngle()).part("is", angle);
    }
    if (deeper) {
      sum.and(" + {deep} x cos({is})", "deep", depths.toe()).part("is", angle);
    }
    front(sum, angle);
    return sum.figure("toe to widest part", foot.toeToWidest());
  }

  private void front(RunningSum sum, Figure angle) {
    if (laid.value() != 0) {
      sum.and(" + {laid} / sin({is}) in front", "laid", laid).part("is", angle);
    }
  }

  private Figure lever(Figure widest, Figure angle) {
    if (back.value() == 0 && !widest.reckoned()) {
      return FootNumbers.lever(widest);
    }
    RunningSum sum = new RunningSum(widest);
    if (back.value() != 0) {
      sum.and(" - {back}", "back", back);
      if (laid.value() != 0) {
        sum.and(" - {laid} / sin({is}) of what is laid on", "laid", laid).part("is", angle);
      }
    }
    return sum.figure("breakover lever", foot.breakover());
  }
}
