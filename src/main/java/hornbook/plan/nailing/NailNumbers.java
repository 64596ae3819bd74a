package hornbook.plan.nailing;

import hornbook.assessment.Side;
import hornbook.assessment.Work;
import hornbook.foot.FootReadings;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.ShoeBranch;

/** How many nails fit and are usual, how far back they go, and how high they leave the wall. */
public final class NailNumbers {
  private final SheetDraft draft;
  private final FootReadings readings;

  public NailNumbers(SheetDraft draft) {
    this.draft = draft;
    this.readings = draft.readings();
  }

  Figure fit(double count, boolean behind) {
    return Figure.reckoned(
        "nails that fit the branch",
        count,
        "",
        "the most that stand {apart} apart in sound wall of {thick} or more, {end} clear of its"
            + " ends, from {toe} to {rear} behind mid-toe",
        FormulaParts.of("apart", draft.limit("nails.spacing"))
            .and("thick", draft.limit("nails.wall.least"))
            .and("end", draft.limit("nails.end-clearance"))
            .and("toe", draft.limit("nails.toe-clearance"))
            .and("rear", rearmost(behind)));
  }

  Figure rearmost(boolean behind) {
    boolean fore = draft.assessed().limb().fore();
    String limit =
        behind ? "nails.waived-rearmost" : fore ? "nails.fore-rearmost" : "nails.hind-rearmost";
    boolean widest = fore && !behind;
    Figure reach =
        Figure.measured(
            widest ? "toe to widest part" : "bearing length",
            widest ? readings.outline().toeToWidest() : readings.outline().bearingLength(),
            "mm",
            null);
    double along =
        behind
            ? readings.limits().nailing().rearmostWaived(readings.outline())
            : readings.rearmostNail();
    return Figure.reckoned(
        "rearmost nail, along the edge",
        along,
        "mm",
        "the place on the edge that lies {share} of {reach} back from the toe",
        FormulaParts.of("share", draft.limit(limit)).and("reach", reach));
  }

  /** The usual number; behind the usual limit no more than hold. */
  int wanted(ShoeBranch branch) {
    int usual = wanted(branch.sites().side());
    double least = draft.limit("nails.branch.least").value();
    return branch.behind() ? (int) Math.min(usual, least) : usual;
  }

  int wanted(Side side) {
    double weight = readings.weight().kg();
    boolean heavy =
        draft.assessment().horse().work() == Work.DRAUGHT
            && draft.limit("nails.draught.weight").limit().allows(weight);
    if (heavy) {
      double both = draft.limit("nails.draught.usual").value();
      return (int) (side == Side.LATERAL ? Math.ceil(both / 2) : Math.floor(both / 2));
    }
    boolean small =
        readings.measures().width() != null
            && readings.measures().width() <= draft.limit("nails.small-foot.width").value();
    return small
        ? (int) Math.ceil(draft.limit("nails.small.usual").value() / 2)
        : (int) draft.limit("nails.branch.usual").value();
  }

  /** The usual number as a figure. */
  Figure usual(ShoeBranch branch) {
    return Figure.reckoned(
        "nails usual in the branch",
        wanted(branch),
        "",
        "{branch} in a branch, {small} in both of a small foot, {heavy} in both of a heavy"
            + " horse; {least} behind the usual limit",
        FormulaParts.of("branch", draft.limit("nails.branch.usual"))
            .and("small", draft.limit("nails.small.usual"))
            .and("heavy", draft.limit("nails.draught.usual"))
            .and("least", draft.limit("nails.branch.least")));
  }

  /** The highest clench in print, but no higher than a third of the toe. */
  Figure highest() {
    Figure most = draft.limit("nails.exit.most");
    Figure toe = draft.given().toeLength();
    Figure share = draft.limit("nails.exit-share");
    double third = thirdOfToe();
    if (!(third < most.value())) {
      return most;
    }
    return Figure.reckoned(
        "highest that a nail leaves the wall",
        third,
        "mm",
        "{share} of the toe, {toe}, where that is less than {most}",
        FormulaParts.of("share", share).and("toe", toe).and("most", most));
  }

  /** One level line for all: the usual height, but no higher than a third of the toe. */
  public Figure exit() {
    Figure usual = draft.limit("nails.exit.usual");
    Figure toe = draft.given().toeLength();
    if (!toe.known()) {
      return Figure.reckoned(
          "height at which nails leave the wall",
          usual.value(),
          "mm",
          "{usual}",
          FormulaParts.of("usual", usual));
    }
    Figure share = draft.limit("nails.exit-share");
    return Figure.reckoned(
        "height at which nails leave the wall",
        Math.min(usual.value(), thirdOfToe()),
        "mm",
        "{usual}, or {share} of the toe, {toe}, if that is less",
        FormulaParts.of("usual", usual).and("share", share).and("toe", toe));
  }

  private double thirdOfToe() {
    return draft.given().toeLength().value() * draft.limit("nails.exit-share").value() / 100;
  }
}
