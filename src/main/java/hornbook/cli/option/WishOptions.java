package hornbook.cli.option;

import hornbook.assessment.quantity.Unit;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.cli.base.ScreenSafe;
import hornbook.plan.sheet.PlanWishes;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;

/** What the farrier wants of a job sheet beyond the technique. */
public final class WishOptions {
  private static final AmountRange RATIO = new AmountRange("--target-ratio", null, 1.1, 10, "2.5");
  private static final AmountRange ANGLE =
      new AmountRange("--target-angle", Unit.DEGREE, 20, 90, "50");
  private static final AmountRange ADD = new AmountRange("--add", Unit.MM, 0, 50, "8mm");
  private static final AmountRange DIP = new AmountRange("--dip", Unit.CELSIUS, 0, 60, "22C");
  private static final AmountRange WEDGE = new AmountRange("--wedge", Unit.DEGREE, 0.5, 15, "3deg");

  private final ArgumentValue<String> ratio;
  private final ArgumentValue<String> angle;
  private final ArgumentValue<String> add;
  private final ArgumentValue<String> dip;
  private final ArgumentValue<List<String>> supports;
  private final ArgumentValue<String> wedge;
  private final ArgumentValue<String> despite;

  public WishOptions(Arguments arguments) {
    ratio =
        arguments.text(
            "RATIO",
            "the ratio of toe length to heel length to reach, such as 2.5",
            "--target-ratio");
    angle = arguments.text("ANGLE", "the toe angle to reach, such as 50deg", "--target-angle");
    add = arguments.text("DEPTH", "depth and thickness of what is built, such as 8mm", "--add");
    dip =
        arguments.text(
            "TEMPERATURE", "temperature of the dip water for casting tape, such as 22C", "--dip");
    supports =
        arguments.texts(
            "SUPPORT",
            "a support to go with it, by id or name, such as straight-bar; may be repeated",
            "--support");
    wedge = arguments.text("ANGLE", "angle of the heel wedge, such as 3deg", "--wedge");
    despite =
        arguments.text(
            "WHY",
            "make the sheet although the advice rules the technique out; your reason is printed",
            "--despite");
  }

  /** The wishes; each word checked against the rule base. */
  public PlanWishes in(Rulebook book) {
    List<String> named = new ArrayList<>();
    for (String support : supports.value()) {
      named.add(NamedArgument.id(support, "support", book.supports()));
    }
    Double degrees = WEDGE.of(wedge.value());
    if (degrees != null && !named.contains("heel-wedge")) {
      named.add("heel-wedge");
    }
    if (despite.value() != null && despite.value().isBlank()) {
      throw Failure.usage("--despite is empty", "say why you need the sheet");
    }
    if (despite.value() != null && !ScreenSafe.of(despite.value()).equals(despite.value())) {
      throw Failure.usage(
          "--despite holds what cannot be printed: " + despite.value(), "say it in plain words");
    }
    return PlanWishes.NONE
        .withTargetRatio(RATIO.of(ratio.value()))
        .withTargetAngle(ANGLE.of(angle.value()))
        .withAdd(ADD.of(add.value()))
        .withDip(DIP.of(dip.value()))
        .withWedge(degrees)
        .withSupports(named.stream().distinct().toList())
        .withDespite(
            despite.value() == null ? null : despite.value().strip().replaceAll("\\s+", " "));
  }
}
