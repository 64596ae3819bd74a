package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.BUILD;

import hornbook.assessment.Adhesive;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;
import java.util.ArrayList;
import java.util.List;

/** What is built on the foot, how thick and how far, and what it takes from the van. */
public final class Building {
  private final SheetDraft draft;
  private final List<Figure> materials = new ArrayList<>();

  /** Thickness of the wrap, or of the composite at its thickest; null where nothing is built. */
  private Figure thickness;

  /** What lies on the side of the wall; null where nothing does. */
  private Figure side;

  public Building(SheetDraft draft) {
    this.draft = draft;
  }

  public List<Figure> materials() {
    return List.copyOf(materials);
  }

  /** Thickness of a wrap on the side of the wall; null without one. */
  public Figure side() {
    return side;
  }

  public Figure thickness() {
    return thickness;
  }

  /**
   * @param nails whether nails are driven
   */
  public void write(boolean nails) {
    switch (draft.technique()) {
      case CAST_WRAP -> {
        Wrapping wrapping = new Wrapping(draft, materials);
        thickness = wrapping.write();
        side = wrapping.side(thickness);
      }
      case PROSTHETIC_WALL -> thickness = new Rebuilding(draft, materials).write(nails);
      case GLUE_ON -> thickness = new Gluing(draft, materials).write();
      case LEAVE_OPEN -> draft.say(BUILD, "build.open");
      case COME_BACK, DRAW_NAIL, DRY_BANDAGE, POULTICE, LEAVE_UNSHOD, NAIL_ON, NAIL_ON_ADAPTED -> {
        // nothing is built
      }
    }
  }

  /** The adhesive in the van, or null, which is asked for. */
  public static Adhesive adhesive(SheetDraft draft) {
    Adhesive adhesive = draft.assessment().kit().adhesive();
    if (adhesive == null) {
      draft.ask("kit.adhesive", "weight and setting times of the adhesive");
    }
    return adhesive;
  }

  /** The density of the adhesive in the van; null, and the adhesive asked for, when unknown. */
  static Figure density(SheetDraft draft) {
    Adhesive adhesive = adhesive(draft);
    return adhesive == null ? null : draft.limit("density." + adhesive.word());
  }

  /** Volume of adhesive to have in hand, cm3, and its weight, g, where its kind is known. */
  static void inHand(SheetDraft draft, Figure net, List<Figure> materials) {
    boolean bond = draft.technique() == Technique.GLUE_ON;
    Figure waste = draft.limit(bond ? "waste.bond" : "waste.adhesive");
    Figure volume =
        Figure.reckoned(
            "adhesive in hand",
            net.value() * (1 + waste.value() / 100),
            "cm3",
            "{net} and {waste} on top",
            FormulaParts.of("net", net).and("waste", waste));
    if (!draft.known(volume)) {
      return;
    }
    materials.add(volume);
    draft.say(BUILD, bond ? "glue.least" : "repair.least", "volume", volume);
    Figure density = density(draft);
    if (density != null) {
      materials.add(
          Figure.reckoned(
              "weight of the adhesive in hand",
              volume.value() * density.value(),
              "g",
              "{volume} x {density}",
              FormulaParts.of("volume", volume).and("density", density)));
    }
  }
}
