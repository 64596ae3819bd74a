package hornbook.advice;

import hornbook.advice.fact.Truth;
import java.util.EnumSet;
import java.util.Set;

/**
 * The order of the questions that lead to a verdict on a technique or support, before one of the
 * techniques is made first choice. The only place that knows it.
 */
public final class VerdictOrder {
  private static final boolean[] YES = {true};
  private static final boolean[] NO = {false};
  private static final boolean[] EITHER = {true, false};

  private VerdictOrder() {}

  /**
   * The verdict.
   *
   * @param ruledOut whether a reason rules it out
   * @param now whether the vet is called at once
   * @param vetDirects whether a vet has taken the case in hand
   * @param indicated whether a reason is for it
   * @param vetFirst whether the vet has to come first: called today, or needed by a reason
   */
  static Verdict of(
      boolean ruledOut, boolean now, boolean vetDirects, boolean indicated, boolean vetFirst) {
    if (ruledOut) {
      return Verdict.RULED_OUT;
    }
    if (now) {
      return vetDirects ? Verdict.WITH_VET : Verdict.RULED_OUT;
    }
    if (!indicated) {
      return Verdict.NOT_INDICATED;
    }
    return vetFirst ? Verdict.WITH_VET : Verdict.WORKABLE;
  }

  /** Every verdict that may come of it, whatever the unknown turns out to be. */
  public static Set<Verdict> possible(
      Truth ruledOut, Truth now, Truth vetDirects, Truth indicated, Truth vetFirst) {
    Set<Verdict> possible = EnumSet.noneOf(Verdict.class);
    for (boolean out : cases(ruledOut)) {
      for (boolean atOnce : cases(now)) {
        for (boolean directs : cases(vetDirects)) {
          for (boolean reasonFor : cases(indicated)) {
            for (boolean first : cases(vetFirst)) {
              possible.add(of(out, atOnce, directs, reasonFor, first));
            }
          }
        }
      }
    }
    return possible;
  }

  private static boolean[] cases(Truth truth) {
    return switch (truth) {
      case TRUE -> YES;
      case FALSE -> NO;
      case UNKNOWN -> EITHER;
    };
  }
}
