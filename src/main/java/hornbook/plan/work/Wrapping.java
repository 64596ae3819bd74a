package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.BUILD;

import hornbook.assessment.WallStretch;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.GroundOutline;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;
import java.util.ArrayList;
import java.util.List;

/** Casting tape in turns round the wall. */
final class Wrapping {
  private final SheetDraft draft;
  private final MeasuredFigures given;
  private final List<Figure> materials;

  Wrapping(SheetDraft draft, List<Figure> materials) {
    this.draft = draft;
    this.given = draft.given();
    this.materials = materials;
  }

  /** Writes it, and gives the thickness of the wrap. */
  Figure write() {
    Figure thickness = thickness();
    Figure toe = cover("height to cover at the toe", given.toeLength());
    Figure heel = cover("height to cover at the heels", given.heelLength());
    Figure clear = draft.limit("hairline.most");
    draft.say(
        BUILD, "wrap.extent", Placeholders.of("toe", toe).and("heel", heel).and("clear", clear));
    Figure layers = layers("layers of tape", "thickness {thickness}", "thickness", thickness);
    Figure side = side(thickness);
    Figure walls =
        layers("layers of tape on the wall", "thickness on the wall {side}", "side", side);
    draft.say(BUILD, "wrap.thickness", Placeholders.of("thickness", thickness).and("side", side));
    draft.say(BUILD, "wrap.layers", Placeholders.of("layers", layers).and("walls", walls));
    bounds(thickness);
    List<Figure> fills = losses(side);
    Figure stays = stays(side);
    tape(new Tape(walls, height(toe, heel), layers, stays), fills);
    draft.say(BUILD, "wrap.overlap", "overlap", draft.limit("wrap.overlap"));
    draft.say(BUILD, "wrap.set-down");
    draft.say(BUILD, "wrap.cut-out", "stays", stays);
    draft.say(BUILD, "wrap.opening", "opening", draft.limit("wrap.opening"));
    return thickness;
  }

  /** How many layers make up a thickness, which the formula calls by that name. */
  private Figure layers(String label, String words, String name, Figure thickness) {
    Figure layer = given.layerThickness();
    return Figure.reckoned(
        label,
        Math.ceil(thickness.value() / layer.value()),
        "",
        words + " / layer {layer}, rounded up",
        FormulaParts.of(name, thickness).and("layer", layer));
  }

  /** The layers of tape on a height of wall, and those under a width of ground face. */
  private record Tape(Figure walls, Figure height, Figure layers, Figure stays) {}

  /** What of the thickness lies on the side of the wall. */
  Figure side(Figure thickness) {
    Figure most = draft.limit("wrap.side");
    return Figure.reckoned(
        "thickness on the wall",
        Math.min(thickness.value(), most.value()),
        "mm",
        "thickness {thickness}, but no more than {most} on the wall",
        FormulaParts.of("thickness", thickness).and("most", most));
  }

  private Figure thickness() {
    if (draft.wishes().add() != null) {
      return Figure.measured("thickness of the wrap", draft.wishes().add(), "mm", null);
    }
    Figure least = draft.limit("wrap.thickness-least");
    Figure most = draft.limit("wrap.thickness-most");
    return Figure.reckoned(
        "thickness of the wrap",
        (least.value() + most.value()) / 2,
        "mm",
        "midway between {least} and {most}",
        FormulaParts.of("least", least).and("most", most));
  }

  private Figure cover(String label, Figure wall) {
    Figure clear = draft.limit("hairline.most");
    return Figure.reckoned(
        label,
        wall.value() - clear.value(),
        "mm",
        "wall {wall} - clearance {clear}",
        FormulaParts.of("wall", wall).and("clear", clear));
  }

  private void bounds(Figure thickness) {
    Figure least = draft.limit("wrap.thickness-least");
    Figure most = draft.limit("wrap.thickness-most");
    if (thickness.value() < least.value()) {
      draft.say(BUILD, "wrap.thin", Placeholders.of("thickness", thickness).and("least", least));
    } else if (thickness.value() > most.value()) {
      draft.say(BUILD, "wrap.thick", Placeholders.of("thickness", thickness).and("most", most));
    }
  }

  /** Gives the tape that fills each loss. */
  private List<Figure> losses(Figure thickness) {
    List<Figure> fills = new ArrayList<>();
    WallStretches walls = new WallStretches(draft);
    for (WallStretch lost : walls.lost()) {
      Figure wall = walls.thickness(lost);
      Figure deep =
          Figure.reckoned(
              "thickness over the loss",
              thickness.value() + wall.value(),
              "mm",
              "wrap {thickness} + lost wall {wall}",
              FormulaParts.of("thickness", thickness).and("wall", wall));
      draft.say(
          BUILD,
          "wrap.loss",
          Placeholders.of("place", WallStretches.place(lost))
              .and("height", given.height(lost))
              .and("deep", deep));
      fills.add(fill(lost, wall));
    }
    return fills;
  }

  private Figure fill(WallStretch lost, Figure wall) {
    Figure length = Figure.measured("length of the loss", lost.to() - lost.from(), "mm", null);
    Figure height = given.height(lost);
    Figure width = given.tapeWidth();
    Figure layer = given.layerThickness();
    return Figure.reckoned(
        "tape to fill the loss",
        length.value() * height.value() * wall.value() / (width.value() * layer.value()),
        "mm",
        "{length} x {height} x {wall} / (tape {width} x layer {layer})",
        FormulaParts.of("length", length)
            .and("height", height)
            .and("wall", wall)
            .and("width", width)
            .and("layer", layer));
  }

  private static Figure height(Figure toe, Figure heel) {
    return Figure.reckoned(
        "mean height of the band on the wall",
        (toe.value() + heel.value()) / 2,
        "mm",
        "mean of {toe} at the toe and {heel} at the heels",
        FormulaParts.of("toe", toe).and("heel", heel));
  }

  private void tape(Tape tape, List<Figure> fills) {
    Figure width = given.tapeWidth();
    Figure turns =
        Figure.reckoned(
            "turns of tape",
            Math.ceil(
                (tape.walls().value() * tape.height().value()
                        + tape.layers().value() * tape.stays().value())
                    / width.value()),
            "",
            "({walls} layers x {height} of wall + {layers} layers x {stays} under it) / tape"
                + " {width}, rounded up",
            FormulaParts.of("walls", tape.walls())
                .and("height", tape.height())
                .and("layers", tape.layers())
                .and("stays", tape.stays())
                .and("width", width));
    Figure girth = girth();
    Figure waste = draft.limit("waste.tape");
    FormulaParts parts = FormulaParts.of("turns", turns).and("girth", girth);
    StringBuilder formula = new StringBuilder("{turns} turns x {girth} round");
    double filling = 0;
    for (int i = 0; i < fills.size(); i++) {
      parts.and("fill" + (i + 1), fills.get(i));
      formula.append(" + {fill").append(i + 1).append("}");
      filling += fills.get(i).value();
    }
    Figure net =
        Figure.reckoned(
            "casting tape on the foot",
            (turns.value() * girth.value() + filling) / 1000,
            "m",
            formula.toString(),
            parts);
    Figure length =
        Figure.reckoned(
            "casting tape in hand",
            net.value() * (1 + waste.value() / 100),
            "m",
            "{net} and {waste} on top",
            FormulaParts.of("net", net).and("waste", waste));
    draft.say(BUILD, "wrap.turns", Placeholders.of("turns", turns).and("length", length));
    if (!length.known()) {
      return;
    }
    materials.add(length);
    rolls(length);
    weight(net, width);
  }

  private void rolls(Figure length) {
    Figure roll = given.rollLength();
    Figure rolls =
        Figure.reckoned(
            "rolls of casting tape",
            Math.ceil(length.value() * 1000 / roll.value()),
            "",
            "{length} / {roll} a roll, rounded up",
            FormulaParts.of("length", length).and("roll", roll));
    if (!draft.known(rolls)) {
      return;
    }
    materials.add(rolls);
    if (rolls.value() > 1) {
      draft.say(BUILD, "wrap.one-roll");
    }
    Integer held = draft.assessment().kit().wrap().rolls();
    if (held == null) {
      draft.ask("kit.wrap.rolls", "whether there is tape enough in the van");
    } else if (held < rolls.value()) {
      Figure have = Figure.measured("rolls in the van", held, "", "kit.wrap.rolls");
      draft.say(BUILD, "wrap.short", Placeholders.of("held", have).and("rolls", rolls));
    }
  }

  private void weight(Figure net, Figure width) {
    Figure layer = given.layerThickness();
    Figure density = draft.limit("density.tape");
    Figure weight =
        Figure.reckoned(
            "weight of the wrap on the foot",
            net.value() * width.value() * layer.value() * density.value(),
            "g",
            "{net} x tape {width} x layer {layer} x {density}",
            FormulaParts.of("net", net)
                .and("width", width)
                .and("layer", layer)
                .and("density", density));
    if (draft.known(weight)) {
      materials.add(weight);
    }
  }

  /** Round the middle of the wall: the mean of hairline and ground edge. */
  private Figure girth() {
    Figure ground = groundGirth();
    Figure coronet = given.coronetGirth();
    return Figure.reckoned(
        "girth of the wall at mid-height",
        (ground.value() + coronet.value()) / 2,
        "mm",
        "mean of coronary band {coronet} and ground edge {ground}",
        FormulaParts.of("coronet", coronet).and("ground", ground));
  }

  private Figure groundGirth() {
    GroundOutline outline = draft.readings().outline();
    return Figure.reckoned(
        "girth of the ground edge",
        outline == null ? Unknown.NUMBER : 2 * outline.edgeLength() + outline.heelWidth(),
        "mm",
        "outline of a foot {width} wide on a bearing length of {bearing}, closed across the"
            + " heels, {heels} of the width apart",
        FormulaParts.of("width", given.width())
            .and("bearing", given.bearingLength())
            .and("heels", draft.limit("outline.heel-width")));
  }

  /** What may stay on the ground face: wrap, wall, and a rim of sole. */
  private Figure stays(Figure thickness) {
    Figure wall = new WallStretches(draft).thickest();
    Figure rim = draft.limit("fit.sole-rim");
    return Figure.reckoned(
        "ground face that stays covered, from the outer edge in",
        thickness.value() + wall.value() + rim.value(),
        "mm",
        "wrap {thickness} + wall {wall} + rim of sole {rim}",
        FormulaParts.of("thickness", thickness).and("wall", wall).and("rim", rim));
  }
}
