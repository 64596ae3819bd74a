package hornbook.plan.effect;

import hornbook.foot.Proportions;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.MeasuredFigures;
import hornbook.plan.sheet.SheetDraft;
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

  public static FootNumbers before(SheetDraft draft) {
    MeasuredFigures given = draft.given();
    Proportions foot = Proportions.before(draft.assessed().measures());
    Figure widest = given.toeToWidest();
    return new FootNumbers(
        given.toeLength(),
        given.heelLength(),
        ratio(foot, given.toeLength(), given.heelLength()),
        given.toeAngle(),
        axis(foot, given.toeAngle(), given.pasternAngle()),
        given.width(),
        given.bearingLength(),
        lever(widest),
        support(foot, given.bearingLength(), widest));
  }

  /**
   * With everything on, and the flares dressed off.
   *
   * @param depths at toe and heel
   * @param thickness laid on the front and on each side, or null
   * @param branch what the bearing is carried back by, or null
   * @param setBack how far the breakover comes back, or null
   */
  public static FootNumbers after(
      SheetDraft draft, AddedDepths depths, Figure thickness, Figure branch, Figure setBack) {
    return new FinishedFoot(draft, depths, thickness, branch, setBack).numbers();
  }

  static Figure lever(Figure widest) {
    return new Figure(
        "breakover lever",
        widest.low(),
        widest.high(),
        widest.unit(),
        null,
        Map.of(),
        null,
        widest.field());
  }

  static Figure ratio(Proportions foot, Figure toe, Figure heel) {
    return Figure.reckoned(
        "toe length to heel length",
        foot.toeHeelRatio(),
        "ratio",
        "{toe} / {heel}",
        FormulaParts.of("toe", toe).and("heel", heel));
  }

  static Figure axis(Proportions foot, Figure angle, Figure pastern) {
    return Figure.reckoned(
        "hoof against pastern",
        foot.hoofPasternDifference(),
        "deg",
        "toe angle {angle} - pastern {pastern}",
        FormulaParts.of("angle", angle).and("pastern", pastern));
  }

  static Figure support(Proportions foot, Figure bearing, Figure widest) {
    return Figure.reckoned(
        "heel support",
        foot.heelSupport(),
        "mm",
        "bearing length {bearing} - 2 x toe to widest part {widest}",
        FormulaParts.of("bearing", bearing).and("widest", widest));
  }
}
