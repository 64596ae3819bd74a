package hornbook.plan.effect;

import static hornbook.plan.sheet.SheetPart.EFFECT;

import hornbook.foot.BuildDepth;
import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.SheetDraft;

/**
 * The depths that would bring the foot to a wanted proportion or angle, and what else they move.
 */
final class Targets {
  private Targets() {}

  static void write(SheetDraft draft) {
    Double ratio = draft.wishes().targetRatio();
    if (ratio != null) {
      ratio(draft, ratio);
    }
    Double angle = draft.wishes().targetAngle();
    if (angle != null) {
      angle(draft, angle);
    }
  }

  private static void ratio(SheetDraft draft, double ratio) {
    SideProfile foot = draft.readings().profile();
    Figure target = target("target toe length to heel length", ratio, "ratio");
    one(draft, "effect.ratio-equal", target, equal(draft, ratio), draft.given().toeAngle());
    Figure heel =
        solved(
            "depth at the heels alone for the ratio",
            BuildDepth.heelForRatio(foot, ratio, 0),
            "toe {toe} / {target} - heel {heel}",
            lengths(draft, target));
    one(
        draft,
        "effect.ratio-heel",
        target,
        heel,
        angle(draft, AddedMaterial.depth(0, heel.value()), heel));
    Figure toe =
        solved(
            "depth at the toe alone for the ratio",
            BuildDepth.toeForRatio(foot, ratio, 0),
            "heel {heel} x {target} - toe {toe}",
            lengths(draft, target));
    one(
        draft,
        "effect.ratio-toe",
        target,
        toe,
        angle(draft, AddedMaterial.depth(toe.value(), 0), toe));
  }

  private static void angle(SheetDraft draft, double angle) {
    SideProfile foot = draft.readings().profile();
    Figure target = target("target toe angle", angle, "deg");
    Figure heel = heelForAngle(draft, angle);
    AddedMaterial heels = AddedMaterial.depth(0, heel.value());
    one(draft, "effect.angle-heel", target, heel, ratioAfter(draft, heels, heel));
    Figure toe =
        solved(
            "depth at the toe alone for the angle",
            BuildDepth.toeForAngle(foot, angle, 0),
            "-bearing length {bearing} x sin({target} - {toe}) / sin({target})",
            triangle(draft, target));
    AddedMaterial toes = AddedMaterial.depth(toe.value(), 0);
    one(draft, "effect.angle-toe", target, toe, ratioAfter(draft, toes, toe));
    draft.say(EFFECT, "effect.angle-equal");
  }

  /** A solved depth in words: to be added, or below 0 horn to come off. */
  private static void one(SheetDraft draft, String id, Figure target, Figure depth, Figure moves) {
    boolean off = depth.value() < 0;
    Figure told =
        off
            ? Figure.reckoned(
                "horn to come off",
                -depth.value(),
                "mm",
                "{depth} turned round",
                FormulaParts.of("depth", depth))
            : depth;
    draft.say(
        EFFECT,
        off ? id + "-off" : id,
        Placeholders.of("target", target).and("depth", told).and("moves", moves));
  }

  /** The same depth at toe and heel for a ratio. */
  static Figure equal(SheetDraft draft, double ratio) {
    Figure target = target("target toe length to heel length", ratio, "ratio");
    return solved(
        "depth at toe and heels alike for the ratio",
        BuildDepth.equalForRatio(draft.readings().profile(), ratio),
        "(toe {toe} - {target} x heel {heel}) / ({target} - 1)",
        lengths(draft, target));
  }

  /** The depth at the heels, nothing at the toe, for an angle. */
  static Figure heelForAngle(SheetDraft draft, double angle) {
    Figure target = target("target toe angle", angle, "deg");
    return solved(
        "depth at the heels alone for the angle",
        BuildDepth.heelForAngle(draft.readings().profile(), angle, 0),
        "bearing length {bearing} x sin({target} - {toe}) / sin({target})",
        triangle(draft, target));
  }

  private static Figure target(String label, double value, String unit) {
    return Figure.measured(label, value, unit, null);
  }

  private static Figure solved(String label, double depth, String formula, FormulaParts parts) {
    return Figure.reckoned(label, depth, "mm", formula, parts);
  }

  private static FormulaParts lengths(SheetDraft draft, Figure target) {
    return FormulaParts.of("toe", draft.given().toeLength())
        .and("heel", draft.given().heelLength())
        .and("target", target);
  }

  private static FormulaParts triangle(SheetDraft draft, Figure target) {
    return FormulaParts.of("bearing", draft.given().bearingLength())
        .and("toe", draft.given().toeAngle())
        .and("target", target);
  }

  private static Figure angle(SheetDraft draft, AddedMaterial build, Figure depth) {
    return Figure.reckoned(
        "toe angle then",
        draft.readings().profile().with(build).toeAngle(),
        "deg",
        "toe angle {toe} turned by {depth} on a bearing length of {bearing}",
        FormulaParts.of("toe", draft.given().toeAngle())
            .and("depth", depth)
            .and("bearing", draft.given().bearingLength()));
  }

  private static Figure ratioAfter(SheetDraft draft, AddedMaterial build, Figure depth) {
    return Figure.reckoned(
        "toe length to heel length then",
        draft.readings().profile().with(build).toeHeelRatio(),
        "ratio",
        "toe {toe} to heel {heel}, one of them with {depth}",
        FormulaParts.of("toe", draft.given().toeLength())
            .and("heel", draft.given().heelLength())
            .and("depth", depth));
  }
}
