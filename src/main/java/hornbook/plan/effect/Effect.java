package hornbook.plan.effect;

import static hornbook.plan.sheet.SheetPart.EFFECT;

import hornbook.foot.JointAngles;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;

/** What the job does to the foot, in words beside the numbers. */
public final class Effect {
  private static final double SAME = 1e-9;

  private final SheetDraft draft;
  private final AddedDepths depths;
  private final FootNumbers before;
  private final FootNumbers after;

  public Effect(SheetDraft draft, AddedDepths depths, FootNumbers before, FootNumbers after) {
    this.draft = draft;
    this.depths = depths;
    this.before = before;
    this.after = after;
  }

  public void write() {
    after.all().forEach(draft::known);
    moves();
    axis();
    deep();
    wedge();
    visit();
    Targets.write(draft);
    lever();
    shoe();
  }

  /** A longer lever in front, or too little behind, is said, not left to the table. */
  private void lever() {
    if (after.breakover().value() > before.breakover().value() + SAME) {
      draft.say(
          EFFECT,
          "effect.lever",
          Placeholders.of("before", before.breakover()).and("after", after.breakover()));
    }
    boolean fore = draft.assessed().limb().fore();
    if (fore && draft.technique().shod() && after.heelSupport().value() < -SAME) {
      draft.say(EFFECT, "effect.support-short", "support", after.heelSupport());
    } else if (!fore) {
      draft.say(EFFECT, "effect.support-hind");
    }
  }

  /** Where proportion and angle part, it is said plainly. */
  private void moves() {
    double ratio = after.toeHeelRatio().value() - before.toeHeelRatio().value();
    double angle = after.toeAngle().value() - before.toeAngle().value();
    boolean alike = depths.toe().known() && depths.equal() && depths.toe().value() > 0;
    Placeholders holes =
        Placeholders.of("before", before.toeHeelRatio())
            .and("after", after.toeHeelRatio())
            .and("angle", after.toeAngle());
    if (alike) {
      draft.say(EFFECT, "effect.equal", holes.and("depth", depths.toe()));
      boolean harms = draft.found("upright-foot") || draft.found("broken-forward");
      if (harms) {
        draft.say(EFFECT, "effect.equal-harms");
      }
    } else if (ratio < -SAME && angle > SAME) {
      draft.say(EFFECT, "effect.steeper", holes.and("was", before.toeAngle()));
    } else if (ratio > SAME && angle < -SAME) {
      draft.say(EFFECT, "effect.flatter", holes.and("was", before.toeAngle()));
    } else if (depths.toe().known() && depths.heel().known() && depths.equal()) {
      draft.say(EFFECT, "effect.nothing");
    }
  }

  /** An axis that is broken still, or is broken by the job, is said. */
  private void axis() {
    Figure axis = after.hoofPasternAxis();
    if (!axis.known()) {
      return;
    }
    if (draft.limit("axis.back").limit().allows(axis.value())) {
      axis("effect.axis-back", axis, -axis.value());
    } else if (draft.limit("axis.forward").limit().allows(axis.value())) {
      axis("effect.axis-forward", axis, axis.value());
    }
  }

  private void axis(String line, Figure axis, double broken) {
    Figure by =
        Figure.reckoned(
            "hoof-pastern axis broken by",
            broken,
            "deg",
            "hoof against pastern {axis}",
            FormulaParts.of("axis", axis));
    draft.say(EFFECT, line, Placeholders.of("by", by).and("was", before.hoofPasternAxis()));
  }

  private void deep() {
    Figure most = draft.limit("wrap.thickness-most");
    Figure deeper = depths.toe().value() > depths.heel().value() ? depths.toe() : depths.heel();
    boolean wrapped = draft.technique() == Technique.CAST_WRAP && depths.lift() == null;
    if (wrapped && deeper.value() > most.value()) {
      draft.say(EFFECT, "wrap.deep", Placeholders.of("depth", deeper).and("most", most));
    }
  }

  private void wedge() {
    if (depths.lift() == null) {
      return;
    }
    Figure lift = depths.lift();
    Figure wedge = lift.parts().get("wedge");
    draft.say(EFFECT, "effect.wedge", Placeholders.of("wedge", wedge).and("lift", lift));
    joints(wedge);
    Figure push = draft.limit("wedge.push");
    Figure under = draft.limit("wedge.push-lift");
    Figure up =
        Figure.reckoned(
            "heel wall that may be pushed up",
            lift.value() * push.value() / under.value(),
            "mm",
            "{push} for {under}, taken as even: {lift} here",
            FormulaParts.of("push", push).and("under", under).and("lift", lift));
    draft.say(EFFECT, "effect.wedge-push", "up", up);
  }

  private void joints(Figure wedge) {
    Figure coffin = draft.limit("joint.coffin");
    Figure pastern = draft.limit("joint.pastern");
    Figure fetlock = draft.limit("joint.fetlock");
    JointAngles turned =
        new JointAngles(coffin.value(), pastern.value(), fetlock.value()).under(wedge.value());
    draft.say(
        EFFECT,
        "effect.wedge-joints",
        Placeholders.of("coffin", turn("coffin", turned.coffin(), coffin, wedge))
            .and("pastern", turn("pastern", turned.pastern(), pastern, wedge))
            .and("fetlock", turn("fetlock", turned.fetlock(), fetlock, wedge)));
  }

  private static Figure turn(String joint, double turned, Figure rate, Figure wedge) {
    return Figure.reckoned(
        "turn of the " + joint + " joint",
        turned,
        "deg",
        "{rate} a degree x {wedge}",
        FormulaParts.of("rate", rate).and("wedge", wedge));
  }

  /** No foot is turned by more than the limit at one visit. */
  private void visit() {
    Figure most = draft.limit("change.per-visit-forward");
    double angle = Math.abs(after.toeAngle().value() - before.toeAngle().value());
    if (angle > most.value() + SAME) {
      draft.say(
          EFFECT,
          "effect.too-much",
          Placeholders.of("was", before.toeAngle())
              .and("angle", after.toeAngle())
              .and("most", most));
    }
  }

  private void shoe() {
    if (draft.technique().shod()) {
      draft.say(EFFECT, "effect.shoe", "shoe", draft.given().shoeThickness());
    }
  }
}
