package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.BUILD;

import hornbook.assessment.WallCrack;
import hornbook.assessment.WallStretch;
import hornbook.plan.effect.WallHeight;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.HeelsFree;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;
import java.util.ArrayList;
import java.util.List;

/** Lost wall built up again in bonded composite. */
final class Rebuilding {
  private final SheetDraft draft;
  private final MeasuredFigures given;
  private final List<Figure> materials;

  Rebuilding(SheetDraft draft, List<Figure> materials) {
    this.draft = draft;
    this.given = draft.given();
    this.materials = materials;
  }

  /** Writes it, and gives the thickness at the thickest; null when there is nothing to rebuild. */
  Figure write(boolean nailed) {
    WallStretches walls = new WallStretches(draft);
    List<Figure> volumes = new ArrayList<>();
    Figure thickest = null;
    for (WallStretch lost : walls.lost()) {
      Figure thickness = walls.thickness(lost);
      volumes.add(loss(lost, thickness));
      boolean thicker = thickest == null || !(thickest.value() >= thickness.value());
      thickest = thicker ? thickness : thickest;
    }
    boolean patched = patches();
    if (volumes.isEmpty()) {
      if (!patched) {
        draft.say(BUILD, "repair.nothing");
      }
      return null;
    }
    draft.say(BUILD, "repair.key");
    layers(thickest);
    draft.say(BUILD, "repair.fibre", "lap", draft.limit("lap"));
    draft.say(BUILD, "repair.sound-to-sound", "lap", draft.limit("lap"));
    draft.say(BUILD, nailed ? "repair.dress-shod" : "repair.dress");
    Building.inHand(draft, sum(volumes), materials);
    return thickest;
  }

  /** Cracks that stand still and let nothing out; whether there was one. */
  private boolean patches() {
    List<WallCrack> cracks = draft.assessed().cracks();
    List<WallCrack> still =
        cracks == null ? List.of() : cracks.stream().filter(Rebuilding::still).toList();
    for (WallCrack crack : still) {
      draft.say(
          BUILD,
          "repair.patch",
          Placeholders.of("place", new Placeholder.Word(crack.place().word()))
              .and("lap", draft.limit("lap")));
    }
    if (!still.isEmpty()) {
      patchAmount();
    }
    return !still.isEmpty();
  }

  /** How long a crack is was not recorded: so much for each centimetre of it. */
  private void patchAmount() {
    Figure lap = draft.limit("lap");
    Figure layer = draft.limit("repair.layer");
    Figure waste = draft.limit("waste.adhesive");
    Figure width =
        Figure.reckoned(
            "width of a patch",
            2 * lap.value(),
            "mm",
            "{lap} on each side of the crack",
            FormulaParts.of("lap", lap));
    Figure volume =
        Figure.reckoned(
            "composite for each centimetre of a crack",
            width.value() * layer.value() / 100 * (1 + waste.value() / 100),
            "cm3",
            "a centimetre x {width} x {layer} at most, and {waste} on top",
            FormulaParts.of("width", width).and("layer", layer).and("waste", waste));
    draft.say(
        BUILD,
        "repair.patch-amount",
        Placeholders.of("volume", volume).and("width", width).and("layer", layer));
  }

  private static boolean still(WallCrack crack) {
    return crack.place() != null
        && Boolean.FALSE.equals(crack.moves())
        && Boolean.FALSE.equals(crack.bleeds())
        && !Boolean.TRUE.equals(crack.seeps());
  }

  private Figure loss(WallStretch lost, Figure thickness) {
    Figure length = Figure.measured("length of the loss", lost.to() - lost.from(), "mm", null);
    Figure height = given.height(lost);
    Figure lap = draft.limit("lap");
    Figure volume =
        Figure.reckoned(
            "composite for the loss",
            (length.value() + lap.value()) * height.value() * thickness.value() / 1000,
            "cm3",
            "({length} + {lap} for two feather edges) x {height} x {thickness}",
            FormulaParts.of("length", length)
                .and("lap", lap)
                .and("height", height)
                .and("thickness", thickness));
    draft.say(
        BUILD,
        "repair.loss",
        Placeholders.of("place", WallStretches.place(lost))
            .and("height", height)
            .and("thickness", thickness)
            .and("volume", volume));
    tooHigh(lost, height);
    tooFarBack(lost);
    return volume;
  }

  /** Composite ends clear of the hairline, whatever the height of the loss. */
  private void tooHigh(WallStretch lost, Figure height) {
    Figure room = room(lost);
    if (room.known() && height.known() && height.value() > room.value()) {
      draft.say(
          BUILD,
          "repair.high",
          Placeholders.of("place", WallStretches.place(lost)).and("room", room));
    }
  }

  /** Composite that runs into the heel is opened there, as a wrap is. */
  private void tooFarBack(WallStretch lost) {
    Figure free = HeelsFree.from(draft);
    if (free.known() && lost.to() > free.value()) {
      draft.say(
          BUILD,
          "repair.heels",
          Placeholders.of("place", WallStretches.place(lost)).and("free", free));
    }
  }

  private Figure room(WallStretch lost) {
    Figure wall = WallHeight.at(draft, (lost.from() + lost.to()) / 2);
    Figure clear = draft.limit("hairline.most");
    return Figure.reckoned(
        "wall to build on, up to the clearance",
        wall.value() - clear.value(),
        "mm",
        "wall {wall} - clearance {clear}",
        FormulaParts.of("wall", wall).and("clear", clear));
  }

  private void layers(Figure thickest) {
    Figure layer = draft.limit("repair.layer");
    Figure layers =
        Figure.reckoned(
            "layers of composite",
            Math.ceil(thickest.value() / layer.value()),
            "",
            "thickness {thickest} / at most {layer} at once, rounded up",
            FormulaParts.of("thickest", thickest).and("layer", layer));
    draft.say(BUILD, "repair.layers", Placeholders.of("layers", layers).and("layer", layer));
  }

  private static Figure sum(List<Figure> volumes) {
    if (volumes.size() == 1) {
      return volumes.get(0);
    }
    double sum = 0;
    FormulaParts parts = FormulaParts.none();
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < volumes.size(); i++) {
      sum += volumes.get(i).value();
      parts.and("loss" + (i + 1), volumes.get(i));
      formula.append(i == 0 ? "" : " + ").append("{loss").append(i + 1).append("}");
    }
    return Figure.reckoned("composite for all losses", sum, "cm3", formula.toString(), parts);
  }
}
