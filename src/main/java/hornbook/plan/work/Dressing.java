package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.DRESS;

import hornbook.assessment.Care;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.Shoeing;
import hornbook.foot.BuildDepth;
import hornbook.foot.shape.SideProfile;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.ForTheVet;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;
import hornbook.rulebook.reserve.Cut;
import java.util.List;

/** What comes off the foot, how much of it, and what is left alone. */
public final class Dressing {
  private final SheetDraft draft;
  private final MeasuredFigures given;
  private Figure setBack;
  private Figure heelsDown;

  public Dressing(SheetDraft draft) {
    this.draft = draft;
    this.given = draft.given();
  }

  /** How far behind the foremost point the foot is to break over; null for none. */
  public Figure setBack() {
    return setBack;
  }

  /** Horn taken off the heels along the wall; null for none. */
  public Figure heelsDown() {
    return heelsDown;
  }

  public void write() {
    oldShoe();
    underPad();
    draft.say(DRESS, "dress.clean");
    new ForTheVet(draft).cuts();
    if (draft.found("trims-away")) {
      draft.say(DRESS, "dress.trim");
    }
    List<WallStretch> wall = draft.assessed().wall();
    if (wall == null) {
      draft.ask(given.path("wall"), "what dead horn and flare come off");
    } else {
      wall.forEach(this::stretch);
    }
    cracks();
    setBack = new ToeDressing(draft).write();
    heels();
    draft.say(DRESS, "dress.level");
    draft.say(DRESS, "dress.keep-off");
    if (draft.found("flat-sole") || draft.found("dropped-sole") || draft.found("thin-sole")) {
      draft.say(DRESS, "dress.thin-sole");
    }
    draft.say(DRESS, edge());
  }

  /** What the rasp does at the edge, or keeps off. */
  private String edge() {
    if (!draft.technique().shod()) {
      return "dress.round";
    }
    return draft.technique().covers() ? "dress.no-rasp-covered" : "dress.no-rasp";
  }

  private void oldShoe() {
    Shoeing shoeing = draft.assessed().shoeing();
    Care care = draft.assessed().care();
    if (Boolean.TRUE.equals(care.studs())) {
      draft.say(DRESS, "dress.off-studs");
    }
    if (shoeing != null && shoeing != Shoeing.UNSHOD) {
      draft.say(DRESS, "dress.off-" + shoeing.word());
    } else if (shoeing == Shoeing.UNSHOD && Boolean.TRUE.equals(draft.assessed().lostShoe())) {
      draft.say(DRESS, "dress.off-lost");
    }
  }

  private void underPad() {
    if (Boolean.TRUE.equals(draft.assessed().care().pad())) {
      draft.say(DRESS, "dress.off-pad");
    }
  }

  private void stretch(WallStretch stretch) {
    if (stretch.side() == null
        || stretch.from() == null
        || stretch.to() == null
        || stretch.state() == null) {
      return;
    }
    Placeholder place = new Placeholder.Place(stretch.side(), stretch.from(), stretch.to());
    Figure height = given.height(stretch);
    switch (stretch.state()) {
      case SEPARATED, CRUMBLING -> separated(place, height);
      case BROKEN_AWAY -> draft.say(DRESS, "dress.broken", "place", place);
      case RESECTED -> draft.say(DRESS, "dress.resected", "place", place);
      case CRACKED -> draft.say(DRESS, "dress.cracked", "place", place);
      case REPAIRED -> draft.say(DRESS, "dress.repaired", "place", place);
      case FLARED -> draft.known(given.flare(stretch));
      case SOUND -> {
        // nothing comes off sound wall but what stands out of line
      }
    }
    if (stretch.flare() != null && stretch.flare() > 0) {
      flare(stretch, place);
    }
  }

  private void separated(Placeholder place, Figure height) {
    if (height.known()) {
      draft.say(DRESS, "dress.dead", Placeholders.of("place", place).and("height", height));
    } else {
      draft.known(height);
      draft.say(DRESS, "dress.dead-unprobed", "place", place);
    }
  }

  /** No more than the wall can spare: a flare wider than that comes back over several trims. */
  private void flare(WallStretch stretch, Placeholder place) {
    Figure flare = given.flare(stretch);
    Figure off = new WallStretches(draft).flareOff(stretch);
    if (!draft.known(off)) {
      return;
    }
    Figure least = draft.limit("nails.wall.least");
    Placeholders holes =
        Placeholders.of("place", place)
            .and("flare", flare)
            .and("off", off)
            .and("least", least)
            .and("thickness", given.thickness(stretch));
    if (off.value() == 0) {
      draft.say(DRESS, "dress.flare-none", holes);
    } else {
      draft.say(DRESS, off.value() < flare.value() ? "dress.flare-part" : "dress.flare", holes);
    }
  }

  private void cracks() {
    if (draft.found("surface-crack")) {
      draft.say(DRESS, "dress.crack-low");
    } else if (draft.found("weak-crack") || draft.found("living-crack")) {
      draft.say(DRESS, "dress.crack");
    }
  }

  private void heels() {
    if (draft.heldBack(Cut.HEELS)) {
      return;
    }
    if (draft.found("club-foot-grade-1") || draft.found("club-foot-grade-2")) {
      draft.say(DRESS, "dress.club");
    } else if (draft.found("broken-forward")) {
      lowerHeels();
    } else if (draft.found("low-heels") || draft.found("under-run-heels")) {
      draft.say(DRESS, "dress.low-heels");
    } else {
      draft.say(DRESS, "dress.heels");
    }
  }

  /** Toward the pastern, but no more at one visit than the limit. */
  private void lowerHeels() {
    SideProfile profile = draft.readings().profile();
    Figure most = draft.limit("change.per-visit-forward");
    Figure toe = given.toeAngle();
    Figure pastern = given.pasternAngle();
    double aim = Math.max(pastern.value(), toe.value() - most.value());
    Figure angle =
        Figure.reckoned(
            "toe angle after the heels are lowered",
            aim,
            "deg",
            "pastern {pastern}, but no more than {most} off {toe} at one visit",
            FormulaParts.of("pastern", pastern).and("most", most).and("toe", toe));
    heelsDown =
        Figure.reckoned(
            "heels to be lowered, along the wall",
            -BuildDepth.heelForAngle(profile, aim, 0),
            "mm",
            "bearing length {bearing} x sin({toe} - {angle}) / sin({angle})",
            FormulaParts.of("bearing", given.bearingLength()).and("toe", toe).and("angle", angle));
    draft.say(
        DRESS,
        "dress.lower-heels",
        Placeholders.of("heels", heelsDown).and("toe", toe).and("angle", angle));
  }
}
