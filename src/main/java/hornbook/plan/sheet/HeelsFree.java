package hornbook.plan.sheet;

import hornbook.foot.number.Unknown;
import hornbook.foot.shape.GroundOutline;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;

/** Where the heels begin, which have to move whatever is bonded ahead of them. */
public final class HeelsFree {
  private HeelsFree() {}

  /** The place along the edge behind which nothing is bonded, mm from the middle of the toe. */
  public static Figure from(SheetDraft draft) {
    GroundOutline outline = draft.readings().outline();
    Figure share = draft.limit("wall.heel-start");
    return Figure.reckoned(
        "edge up to which the foot is bonded",
        outline == null ? Unknown.NUMBER : Math.floor(outline.edgeLength() * share.value() / 100),
        "mm",
        "{share} of the edge of a foot {width} wide on a bearing length of {bearing}, in whole mm",
        FormulaParts.of("share", share)
            .and("width", draft.given().width())
            .and("bearing", draft.given().bearingLength()));
  }
}
