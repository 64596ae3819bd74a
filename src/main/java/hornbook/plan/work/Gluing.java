package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.BUILD;

import hornbook.assessment.WallStretch;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.HeelsFree;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;
import java.util.List;

/** A shoe bonded to sound wall. */
final class Gluing {
  private final SheetDraft draft;
  private final MeasuredFigures given;
  private final List<Figure> materials;

  Gluing(SheetDraft draft, List<Figure> materials) {
    this.draft = draft;
    this.given = draft.given();
    this.materials = materials;
  }

  /** Writes it, and gives the thickness of the bond. */
  Figure write() {
    WallStretches walls = new WallStretches(draft);
    Figure free = HeelsFree.from(draft);
    double length = 0;
    for (WallStretch sound : walls.sound()) {
      double to = free.known() ? Math.min(sound.to(), free.value()) : sound.to();
      if (to > sound.from()) {
        length += to - sound.from();
        draft.say(BUILD, "glue.bond", "place", WallStretches.place(sound.side(), sound.from(), to));
      }
    }
    for (WallStretch lost : walls.lost()) {
      draft.say(BUILD, "glue.bridge", "place", WallStretches.place(lost));
    }
    draft.say(BUILD, "glue.heels", "free", free);
    draft.say(BUILD, "glue.clear");
    draft.say(BUILD, "glue.lip", "lip", draft.limit("glue.lip"));
    draft.say(BUILD, "glue.set-down");
    cycles();
    Figure layer = draft.limit("glue.layer");
    if (draft.assessed().wall() != null) {
      volume(length, free, layer);
    }
    return layer;
  }

  private void cycles() {
    Integer glued = draft.assessed().gluedCycles();
    Figure most = draft.limit("aftercare.glue.cycles");
    if (glued == null) {
      draft.ask(given.path("gluedCycles"), "how many glued cycles are left");
      return;
    }
    Figure before = Figure.measured("glued cycles so far", glued, "", given.path("gluedCycles"));
    Figure cycle =
        Figure.reckoned(
            "glued cycles with this one",
            glued + 1,
            "",
            "{before} + this one",
            FormulaParts.of("before", before));
    draft.say(BUILD, "glue.cycles", Placeholders.of("cycle", cycle).and("most", most));
  }

  private void volume(double length, Figure free, Figure layer) {
    Figure bonded =
        Figure.reckoned(
            "edge that is bonded, both sides",
            length,
            "mm",
            "sound wall on the map up to {free}",
            FormulaParts.of("free", free));
    Figure web = given.webWidth();
    Figure lip = draft.limit("glue.lip");
    Figure net =
        Figure.reckoned(
            "adhesive in the bond",
            length * (web.value() + lip.value()) * layer.value() / 1000,
            "cm3",
            "{bonded} x (web {web} + lip {lip}) x {layer}",
            FormulaParts.of("bonded", bonded).and("web", web).and("lip", lip).and("layer", layer));
    Building.inHand(draft, net, materials);
  }
}
