package hornbook.plan.effect;

import hornbook.foot.number.Unknown;
import hornbook.foot.shape.CoronaryBand;
import hornbook.foot.shape.GroundOutline;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;

/** How high the wall is between toe and heel, taken to fall evenly from the one to the other. */
public final class WallHeight {
  private WallHeight() {}

  /**
   * At a place on the edge.
   *
   * @param along from the middle of the toe, mm
   */
  public static Figure at(SheetDraft draft, double along) {
    GroundOutline outline = draft.readings().outline();
    CoronaryBand band = CoronaryBand.of(draft.readings().measures(), outline);
    boolean there = outline != null && along <= outline.edgeLength();
    MeasuredFigures given = draft.given();
    Figure toe = given.toeLength();
    Figure heel = given.heelLength();
    Figure share =
        Figure.reckoned(
            "share of the bearing length ahead of the place",
            there ? 100 * band.ahead(along) : Unknown.NUMBER,
            "%",
            "outline of a foot {width} wide on a bearing length of {bearing}, {along} from mid-toe",
            FormulaParts.of("width", given.width())
                .and("bearing", given.bearingLength())
                .and("along", Figure.measured("place", along, "mm", null)));
    return Figure.reckoned(
        "height of the wall at the place",
        band.above(along),
        "mm",
        "toe {toe} falling evenly to heel {heel}, {share} of the way",
        FormulaParts.of("toe", toe).and("heel", heel).and("share", share));
  }
}
