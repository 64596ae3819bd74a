package hornbook.plan;

import hornbook.foot.GroundOutline;

/** How high the wall is between toe and heel, taken to fall evenly from the one to the other. */
final class WallHeight {
  private WallHeight() {}

  /**
   * At a place on the edge.
   *
   * @param along from the middle of the toe, mm
   */
  static Figure at(Draft draft, double along) {
    GroundOutline outline = draft.readings().outline();
    boolean there = outline != null && along <= outline.edgeLength();
    Given given = draft.given();
    Figure toe = given.toeLength();
    Figure heel = given.heelLength();
    Figure share =
        Figure.reckoned(
            "share of the bearing length ahead of the place",
            there ? 100 * outline.at(along).back() / outline.bearingLength() : Double.NaN,
            "%",
            "outline of a foot {width} wide on a bearing length of {bearing}, {along} from mid-toe",
            Parts.of("width", given.width())
                .and("bearing", given.bearingLength())
                .and("along", Figure.measured("place", along, "mm", null)));
    return Figure.reckoned(
        "height of the wall at the place",
        toe.value() + (heel.value() - toe.value()) * share.value() / 100,
        "mm",
        "toe {toe} falling evenly to heel {heel}, {share} of the way",
        Parts.of("toe", toe).and("heel", heel).and("share", share));
  }
}
