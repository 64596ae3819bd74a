package hornbook.plan;

import hornbook.foot.Build;
import hornbook.foot.SideProfile;
import java.util.List;
import java.util.Map;

/** The numbers of a foot that a job changes. */
public record FootNumbers(
    Figure toeLength,
    Figure heelLength,
    Figure toeHeelRatio,
    Figure toeAngle,
    Figure hoofPasternAxis,
    Figure width,
    Figure bearingLength,
    Figure breakover,
    Figure heelSupport) {

  /** All of them, in the order of the record. */
  public List<Figure> all() {
    return List.of(
        toeLength,
        heelLength,
        toeHeelRatio,
        toeAngle,
        hoofPasternAxis,
        width,
        bearingLength,
        breakover,
        heelSupport);
  }

  static FootNumbers before(Draft draft) {
    Given given = draft.given();
    SideProfile foot = draft.readings().profile();
    Figure widest = given.toeToWidest();
    return new FootNumbers(
        given.toeLength(),
        given.heelLength(),
        ratio(foot, given.toeLength(), given.heelLength()),
        given.toeAngle(),
        axis(foot, given.toeAngle(), given.pasternAngle()),
        given.width(),
        given.bearingLength(),
        new Figure(
            "breakover lever",
            widest.low(),
            widest.high(),
            widest.unit(),
            null,
            Map.of(),
            null,
            widest.field()),
        support(foot, given.bearingLength(), widest));
  }

  /**
   * With everything on.
   *
   * @param depths at toe and heel
   * @param thickness laid on the front and on each side, or null
   * @param branch what the bearing is carried back by, or null
   * @param setBack how far the breakover comes back, or null
   */
  static FootNumbers after(
      Draft draft, Depths depths, Figure thickness, Figure branch, Figure setBack) {
    Given given = draft.given();
    Figure laid = orNothing(thickness, "thickness laid on");
    Figure behind = orNothing(branch, "branch behind the heels");
    Figure back = orNothing(setBack, "breakover to come back");
    SideProfile bare = draft.readings().profile();
    double forward = bare.with(Build.depth(depths.toe().value(), depths.heel().value())).toeAngle();
    double front = laid.value() == 0 ? 0 : laid.value() / Math.sin(Math.toRadians(forward));
    SideProfile foot =
        bare.with(
            Build.depth(depths.toe().value(), depths.heel().value())
                .withFront(laid.value())
                .withBehind(behind.value())
                .withSetBack(back.value() == 0 ? 0 : back.value() + front));
    Figure toe = longer("toe length", foot.toeLength(), given.toeLength(), depths.toe());
    Figure heel = longer("heel length", foot.heelLength(), given.heelLength(), depths.heel());
    Figure angle = turned(foot, given, depths);
    Figure bearing =
        Figure.reckoned(
            "bearing length",
            foot.bearingLength(),
            "mm",
            "{before} turned to {angle}, with {laid} laid on in front and {behind} behind",
            Parts.of("before", given.bearingLength())
                .and("angle", angle)
                .and("laid", laid)
                .and("behind", behind));
    Figure widest =
        Figure.reckoned(
            "toe to widest part",
            foot.toeToWidest(),
            "mm",
            "{before} turned to {angle}, with {laid} laid on in front",
            Parts.of("before", given.toeToWidest()).and("angle", angle).and("laid", laid));
    return new FootNumbers(
        toe,
        heel,
        ratio(foot, toe, heel),
        angle,
        axis(foot, angle, given.pasternAngle()),
        Figure.reckoned(
            "width",
            given.width().value() + 2 * laid.value(),
            "mm",
            "{before} + {laid} on each side",
            Parts.of("before", given.width()).and("laid", laid)),
        bearing,
        Figure.reckoned(
            "breakover lever",
            foot.breakover(),
            "mm",
            "{widest} - breakover back by {back} and by what is laid on in front",
            Parts.of("widest", widest).and("back", back)),
        support(foot, bearing, widest));
  }

  private static Figure orNothing(Figure figure, String label) {
    return figure == null || !figure.known() ? Figure.measured(label, 0, "mm", null) : figure;
  }

  private static Figure longer(String label, double value, Figure before, Figure depth) {
    return Figure.reckoned(
        label, value, "mm", "{before} + {depth}", Parts.of("before", before).and("depth", depth));
  }

  private static Figure turned(SideProfile foot, Given given, Depths depths) {
    if (depths.toe().known() && depths.equal()) {
      return Figure.reckoned(
          "toe angle",
          given.toeAngle().value(),
          "deg",
          "{before}: the same at toe and heels turns nothing",
          Parts.of("before", given.toeAngle()));
    }
    return Figure.reckoned(
        "toe angle",
        foot.toeAngle(),
        "deg",
        "{before} + atan(d sin({before}) / ({bearing} - d cos({before}))), d = heels {heel} - toe"
            + " {toe}",
        Parts.of("before", given.toeAngle())
            .and("bearing", given.bearingLength())
            .and("heel", depths.heel())
            .and("toe", depths.toe()));
  }

  private static Figure ratio(SideProfile foot, Figure toe, Figure heel) {
    return Figure.reckoned(
        "toe length to heel length",
        foot.toeHeelRatio(),
        "ratio",
        "{toe} / {heel}",
        Parts.of("toe", toe).and("heel", heel));
  }

  private static Figure axis(SideProfile foot, Figure angle, Figure pastern) {
    return Figure.reckoned(
        "hoof against pastern",
        foot.hoofPasternDifference(),
        "deg",
        "toe angle {angle} - pastern {pastern}",
        Parts.of("angle", angle).and("pastern", pastern));
  }

  private static Figure support(SideProfile foot, Figure bearing, Figure widest) {
    return Figure.reckoned(
        "heel support",
        foot.heelSupport(),
        "mm",
        "bearing length {bearing} - 2 x toe to widest part {widest}",
        Parts.of("bearing", bearing).and("widest", widest));
  }
}
