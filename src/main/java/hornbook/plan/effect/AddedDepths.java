package hornbook.plan.effect;

import hornbook.foot.BuildDepth;
import hornbook.foot.shape.SideProfile;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetDraft;

/**
 * What is added to the foot along the wall, or taken off it below 0, in mm.
 *
 * @param toe at the toe
 * @param heel at the heels, with a wedge and what the heels were lowered by
 * @param lift what the wedge lifts the heels, square to the ground; null without one
 */
public record AddedDepths(Figure toe, Figure heel, Figure lift) {
  private static final Figure NOTHING = Figure.measured("depth added", 0, "mm", null);

  /**
   * The depths of a job.
   *
   * @param thickness of what is built, or null
   * @param heelsDown horn taken off the heels, or null
   */
  public static AddedDepths of(SheetDraft draft, Figure thickness, Figure heelsDown) {
    Figure toe = added(draft, thickness);
    Figure heel = addedAtHeel(draft, toe);
    if (heelsDown != null) {
      heel =
          Figure.reckoned(
              "depth at the heels",
              heel.value() - heelsDown.value(),
              "mm",
              "{added} - lowered {lowered}",
              FormulaParts.of("added", heel).and("lowered", heelsDown));
    }
    Figure lift = lift(draft);
    return new AddedDepths(toe, lift == null ? heel : onWedge(draft, heel, lift), lift);
  }

  private static Figure added(SheetDraft draft, Figure thickness) {
    PlanWishes wishes = draft.wishes();
    if (!draft.technique().shod()) {
      return NOTHING;
    }
    if (wishes.add() != null) {
      return Figure.measured("depth added", wishes.add(), "mm", null);
    }
    if (draft.technique().builds() && wishes.targetRatio() != null) {
      Figure equal = Targets.equal(draft, wishes.targetRatio());
      return equal.value() > 0 ? equal : NOTHING;
    }
    return switch (draft.technique()) {
      case CAST_WRAP -> wishes.targetAngle() == null ? thickness : NOTHING;
      case GLUE_ON -> alongWall(draft, underGlue(draft, thickness), "bond");
      default ->
          draft.wished("pad") ? alongWall(draft, draft.limit("pad.thickness"), "pad") : NOTHING;
    };
  }

  private static Figure addedAtHeel(SheetDraft draft, Figure toe) {
    PlanWishes wishes = draft.wishes();
    boolean turn =
        draft.technique().builds()
            && wishes.targetAngle() != null
            && wishes.targetRatio() == null
            && wishes.add() == null;
    Figure heel = turn ? Targets.heelForAngle(draft, wishes.targetAngle()) : toe;
    return turn && heel.value() < 0 ? toe : heel;
  }

  private static Figure underGlue(SheetDraft draft, Figure bond) {
    if (!draft.wished("pad")) {
      return bond;
    }
    Figure pad = draft.limit("pad.thickness");
    return Figure.reckoned(
        "bond and pad",
        bond.value() + pad.value(),
        "mm",
        "{bond} + pad {pad}",
        FormulaParts.of("bond", bond).and("pad", pad));
  }

  /** A layer between foot and shoe, measured square to the ground. */
  private static Figure alongWall(SheetDraft draft, Figure layer, String what) {
    Figure angle = draft.given().toeAngle();
    SideProfile profile = draft.readings().profile();
    return Figure.reckoned(
        "depth of the " + what + " along the wall",
        BuildDepth.square(profile, layer.value(), layer.value()).toeDepth(),
        "mm",
        "{layer} / sin({angle})",
        FormulaParts.of("layer", layer)
            .and("angle", angle)
            .and("bearing", draft.given().bearingLength()));
  }

  /** Null without a wedge. */
  private static Figure lift(SheetDraft draft) {
    if (!draft.wished("heel-wedge")) {
      return null;
    }
    Double wedge = draft.wishes().wedge();
    Figure angle = Figure.measured("angle of the wedge", wedge, "deg", "--wedge");
    Figure bearing = draft.given().bearingLength();
    return Figure.reckoned(
        "lift of the wedge at the heels",
        BuildDepth.lift(bearing.value(), angle.value()),
        "mm",
        "bearing length {bearing} x tan({wedge})",
        FormulaParts.of("bearing", bearing).and("wedge", angle));
  }

  private static Figure onWedge(SheetDraft draft, Figure heel, Figure lift) {
    Figure wedge = lift.parts().get("wedge");
    SideProfile profile = draft.readings().profile();
    Figure along =
        Figure.reckoned(
            "lift of the wedge along the heel wall",
            BuildDepth.wedge(profile, wedge.value()).heelDepth(),
            "mm",
            "{lift} x cos({wedge}) / sin({toe} + {wedge})",
            FormulaParts.of("lift", lift).and("wedge", wedge).and("toe", draft.given().toeAngle()));
    if (heel.value() == 0 && !heel.reckoned()) {
      return along;
    }
    return Figure.reckoned(
        "depth at the heels",
        heel.value() + along.value(),
        "mm",
        "{heel} + wedge {along}",
        FormulaParts.of("heel", heel).and("along", along));
  }

  /** Whether the same is added at toe and heel. */
  boolean equal() {
    return toe.value() == heel.value();
  }
}
