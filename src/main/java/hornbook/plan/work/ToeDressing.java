package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.DRESS;

import hornbook.advice.OptionAdvice;
import hornbook.foot.number.Interval;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;
import hornbook.rulebook.reserve.Cut;
import java.util.List;

/**
 * How far the breakover comes back, and what of that the rasp may take. Only a toe that has run
 * forward is dressed from the front, and never thinner than a nail wants; the shoe does the rest.
 */
final class ToeDressing {
  /** The supports that bring the breakover back. */
  private static final List<String> BACK = List.of("rolled-toe", "set-back-toe");

  private final SheetDraft draft;
  private final MeasuredFigures given;

  ToeDressing(SheetDraft draft) {
    this.draft = draft;
    this.given = draft.given();
  }

  /** Writes it, and gives how far the breakover comes back; null where no aim is known. */
  Figure write() {
    Figure back = draft.limited("breakover.frog") && wanted() ? breakover() : null;
    overUsual();
    return back;
  }

  /** The sheet brings nothing back where the advice finds no reason to, or the vet decides. */
  private boolean wanted() {
    return !draft.heldBack(Cut.TOE)
        && (forward() || BACK.stream().anyMatch(one -> draft.wished(one) || open(one)));
  }

  private boolean open(String support) {
    OptionAdvice judged = draft.foot().support(support);
    return judged != null && judged.verdict().open();
  }

  private boolean forward() {
    return draft.found("long-toe") || draft.found("toe-forward");
  }

  private Figure breakover() {
    Figure aim = aim();
    Figure frog = given.toeToFrog();
    Figure back =
        Figure.reckoned(
            "breakover to come back",
            Math.max(0, frog.value() - aim.value()),
            "mm",
            "toe to point of frog {frog} - aim {aim}, and never forward",
            FormulaParts.of("frog", frog).and("aim", aim));
    Placeholders holes = Placeholders.of("back", back).and("frog", frog).and("aim", aim);
    if (!(back.value() > 0)) {
      draft.say(DRESS, "dress.toe-there", holes);
      return back;
    }
    draft.say(DRESS, "dress.toe-back", holes);
    return draft.technique().shod() ? shod(back) : bare(back);
  }

  /** Further ahead of the frog on a foot longer than a riding horse's: it moves back less. */
  private Figure aim() {
    Figure usual = draft.limit("breakover.frog");
    Figure share = draft.limit("breakover.frog-share");
    Figure bearing = given.bearingLength();
    double grown = bearing.value() * share.value() / 100;
    if (!(grown > usual.value())) {
      return usual;
    }
    return Figure.reckoned(
        "breakover aim ahead of the point of the frog",
        grown,
        "mm",
        "{share} of the bearing length {bearing}, where that is more than {usual}",
        FormulaParts.of("share", share).and("bearing", bearing).and("usual", usual));
  }

  private Figure shod(Figure back) {
    Figure wall = new WallStretches(draft).toe();
    if (!forward() || wall == null) {
      draft.say(DRESS, "dress.toe-keep");
      return back;
    }
    Figure front = front(wall, back);
    dress("dress.toe-front", front, wall);
    Figure rest =
        Figure.reckoned(
            "breakover left to the shoe",
            back.value() - front.value(),
            "mm",
            "{back} - dressed off {front}",
            FormulaParts.of("back", back).and("front", front));
    if (!(rest.value() <= 0)) {
      draft.say(DRESS, "dress.toe-shoe", "rest", rest);
    }
    return back;
  }

  /** A bare toe is rounded as far as its wall allows; what is left over waits for growth. */
  private Figure bare(Figure back) {
    Figure wall = new WallStretches(draft).toe();
    if (wall == null) {
      return null;
    }
    Figure front = front(wall, back);
    dress("dress.toe-round", front, wall);
    return front;
  }

  private void dress(String line, Figure front, Figure wall) {
    Figure least = draft.limit("nails.wall.least");
    if (front.value() == 0) {
      draft.say(DRESS, "dress.toe-thin", Placeholders.of("wall", wall).and("least", least));
    } else {
      draft.say(DRESS, line, Placeholders.of("front", front).and("least", least));
    }
  }

  private Figure front(Figure wall, Figure back) {
    Figure least = draft.limit("nails.wall.least");
    Figure angle = given.toeAngle();
    double spare = (wall.value() - least.value()) / Math.sin(Math.toRadians(angle.value()));
    return Figure.reckoned(
        "toe to come off in front, at the ground",
        Math.min(back.value(), Math.max(0, spare)),
        "mm",
        "(wall {wall} - {least}) / sin({angle}), and no more than {back}",
        FormulaParts.of("wall", wall).and("least", least).and("angle", angle).and("back", back));
  }

  /** A toe long for the weight is shortened from the front, whatever the figure says. */
  private void overUsual() {
    Interval usual = draft.readings().limits().usualToe().at(draft.readings().weight().kg());
    if (draft.found("long-toe") && usual.known()) {
      FormulaParts bands = FormulaParts.of("toe", given.toeLength());
      for (String band : List.of("light", "medium", "heavy")) {
        bands.and(band, draft.limit("toe.usual-" + band));
      }
      Figure over =
          Figure.between(
              "toe over the usual for the weight",
              given.toeLength().value() - usual.high(),
              given.toeLength().value() - usual.low(),
              "mm",
              "toe {toe} - usual for the weight ({light}, {medium} or {heavy})",
              bands);
      draft.say(DRESS, "dress.toe-long", "over", over);
    }
  }
}
