package hornbook.plan.effect;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.wall.WallGroup;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.sheet.SheetDraft;
import java.util.ArrayList;
import java.util.List;

/** The stretches of the mapped wall a build is made for. */
public final class WallStretches {
  private final SheetDraft draft;
  private final List<WallStretch> whole = new ArrayList<>();

  public WallStretches(SheetDraft draft) {
    this.draft = draft;
    List<WallStretch> wall = draft.assessed().wall();
    if (wall == null) {
      draft.ask(draft.given().path("wall"), "what of the wall is lost and what is sound");
    } else {
      wall.stream().filter(WallStretches::placed).forEach(whole::add);
    }
  }

  private static boolean placed(WallStretch stretch) {
    return stretch.side() != null
        && stretch.state() != null
        && stretch.from() != null
        && stretch.to() != null
        && stretch.from() < stretch.to();
  }

  /** Missing or separated: once the dead horn is off, gone. */
  public List<WallStretch> lost() {
    return whole.stream().filter(one -> WallGroup.of(one.state()).defect()).toList();
  }

  public List<WallStretch> sound() {
    return whole.stream().filter(one -> WallGroup.of(one.state()) == WallGroup.SOUND).toList();
  }

  /** Thickness of the wall at a loss: its own, else that of the nearest sound wall of its side. */
  public Figure thickness(WallStretch lost) {
    if (lost.thickness() != null) {
      return draft.given().thickness(lost);
    }
    WallStretch nearest = null;
    for (WallStretch one : sound()) {
      boolean nearer = nearest == null || gap(one, lost) < gap(nearest, lost);
      if (one.side() == lost.side() && one.thickness() != null && nearer) {
        nearest = one;
      }
    }
    return draft.given().thickness(nearest == null ? lost : nearest);
  }

  private static double gap(WallStretch one, WallStretch other) {
    return Math.max(one.from(), other.from()) - Math.min(one.to(), other.to());
  }

  /**
   * Thickness of the wall at the middle of the toe, the thinner where the two sides differ; null
   * where some of it is lost. What stands there and was not measured is unknown.
   */
  public Figure toe() {
    Figure thinnest = null;
    for (WallStretch one : whole) {
      if (one.from() > 0) {
        continue;
      }
      Figure here = draft.given().thickness(one);
      if (WallGroup.of(one.state()).defect()) {
        return null;
      }
      boolean thinner = thinnest == null || !here.known() || here.value() < thinnest.value();
      thinnest = thinner ? here : thinnest;
    }
    return thinnest == null ? unmapped() : thinnest;
  }

  /** Flares that are dressed off at the widest part, both sides together; null for none. */
  Figure flaresAtWidest() {
    GroundOutline outline = draft.readings().outline();
    FormulaParts parts = FormulaParts.none();
    StringBuilder formula = new StringBuilder();
    double sum = 0;
    for (WallStretch one : whole) {
      boolean there =
          outline != null
              && one.from() <= outline.edgeToWidest()
              && outline.edgeToWidest() < one.to();
      boolean flared = one.state() == WallState.FLARED || one.flare() != null && one.flare() > 0;
      if (there && flared) {
        Figure flare = flareOff(one);
        sum += flare.value();
        formula.append(formula.isEmpty() ? "{" : " + {").append(one.side().word()).append("}");
        parts.and(one.side().word(), flare);
      }
    }
    return parts.all().isEmpty()
        ? null
        : Figure.reckoned("flares at the widest part", sum, "mm", formula.toString(), parts);
  }

  /** What of a flare comes off at one trim: the wall keeps what a nail needs. */
  public Figure flareOff(WallStretch one) {
    Figure flare = draft.given().flare(one);
    Figure thickness = draft.given().thickness(one);
    Figure least = draft.limit("nails.wall.least");
    double spare = Math.max(0, thickness.value() - least.value());
    return Figure.reckoned(
        "flare to come off at this trim",
        Math.min(flare.value(), spare),
        "mm",
        "flare {flare}, but no more than wall {thickness} - {least}",
        FormulaParts.of("flare", flare).and("thickness", thickness).and("least", least));
  }

  private Figure unmapped() {
    return Figure.measured("wall thickness", null, "mm", draft.given().path("wall"));
  }

  /**
   * The thickest wall on the map; the field of the first stretch is asked for when none is known.
   */
  public Figure thickest() {
    WallStretch thickest = null;
    for (WallStretch one : whole) {
      boolean thicker = thickest == null || thickest.thickness() == null || greater(one, thickest);
      if (thicker) {
        thickest = one.thickness() == null && thickest != null ? thickest : one;
      }
    }
    return thickest == null ? unmapped() : draft.given().thickness(thickest);
  }

  private static boolean greater(WallStretch one, WallStretch other) {
    return one.thickness() != null && one.thickness() > other.thickness();
  }

  public static Placeholder place(WallStretch stretch) {
    return place(stretch.side(), stretch.from(), stretch.to());
  }

  public static Placeholder place(Side side, double from, double to) {
    return new Placeholder.Place(side, from, to);
  }
}
