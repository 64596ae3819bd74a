package hornbook.plan.sheet;

import java.util.List;

/**
 * What the farrier wants of the sheet beyond the technique; null where nothing was said.
 *
 * @param targetRatio ratio of toe length to heel length to reach
 * @param targetAngle toe angle to reach, deg
 * @param add depth of the build under the wall, and thickness on it, mm
 * @param dip temperature of the dip water for casting tape, C
 * @param wedge angle of a heel wedge, deg
 * @param supports supports to go with the technique, by name
 * @param despite why the sheet is wanted although the advice rules the technique out
 */
public record PlanWishes(
    Double targetRatio,
    Double targetAngle,
    Double add,
    Double dip,
    Double wedge,
    List<String> supports,
    String despite) {
  public static final PlanWishes NONE =
      new PlanWishes(null, null, null, null, null, List.of(), null);

  public PlanWishes {
    supports = List.copyOf(supports);
  }

  public PlanWishes withTargetRatio(Double ratio) {
    return new PlanWishes(ratio, targetAngle, add, dip, wedge, supports, despite);
  }

  public PlanWishes withTargetAngle(Double angle) {
    return new PlanWishes(targetRatio, angle, add, dip, wedge, supports, despite);
  }

  public PlanWishes withAdd(Double depth) {
    return new PlanWishes(targetRatio, targetAngle, depth, dip, wedge, supports, despite);
  }

  public PlanWishes withDip(Double temperature) {
    return new PlanWishes(targetRatio, targetAngle, add, temperature, wedge, supports, despite);
  }

  public PlanWishes withWedge(Double angle) {
    return new PlanWishes(targetRatio, targetAngle, add, dip, angle, supports, despite);
  }

  public PlanWishes withSupports(List<String> names) {
    return new PlanWishes(targetRatio, targetAngle, add, dip, wedge, names, despite);
  }

  public PlanWishes withDespite(String why) {
    return new PlanWishes(targetRatio, targetAngle, add, dip, wedge, supports, why);
  }
}
