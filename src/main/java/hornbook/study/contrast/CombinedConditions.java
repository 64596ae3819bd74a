package hornbook.study.contrast;

import java.util.BitSet;
import java.util.List;

/**
 * The conditions a foot meets after two or three steps. Steps that turn different conditions are
 * put together; where one could bear on the other, both are worked out anew.
 */
final class CombinedConditions {
  private final WhatIf foot;
  private final List<SingleChange> steps;
  private final BlockingRules barriers;
  private final BitSet[] moved;
  private final BitSet[][] met;
  private final long[][] gone;

  CombinedConditions(WhatIf foot, List<SingleChange> steps, BlockingRules barriers) {
    this.foot = foot;
    this.steps = steps;
    this.barriers = barriers;
    this.moved = new BitSet[steps.size()];
    this.met = new BitSet[steps.size()][steps.size()];
    this.gone = new long[steps.size()][steps.size()];
    for (int at = 0; at < moved.length; at++) {
      moved[at] = (BitSet) steps.get(at).met().clone();
      moved[at].xor(foot.met());
    }
  }

  /** After two steps, the nearer first; null where both are of the same thing. */
  BitSet met(int one, int other) {
    if (met[one][other] == null && steps.get(one).what() != steps.get(other).what()) {
      met[one][other] =
          bears(one, other)
              ? foot.met(List.of(steps.get(one), steps.get(other)))
              : with(steps.get(one).met(), other);
      gone[one][other] = barriers.gone(met[one][other]);
    }
    return met[one][other];
  }

  /** The barriers gone after two steps, the nearer first; none where both are of the same thing. */
  long gone(int one, int other) {
    met(one, other);
    return gone[one][other];
  }

  /**
   * After three steps, the nearest first; null where two are of the same thing, and where none of
   * them stands apart from the others.
   */
  BitSet met(int one, int other, int third) {
    if (met(one, other) == null || met(one, third) == null || met(other, third) == null) {
      return null;
    }
    if (!bears(one, third) && !bears(other, third)) {
      return with(met(one, other), third);
    }
    if (!bears(one, other) && !bears(other, third)) {
      return with(met(one, third), other);
    }
    return bears(one, other) || bears(one, third) ? null : with(met(other, third), one);
  }

  private BitSet with(BitSet before, int step) {
    BitSet after = (BitSet) before.clone();
    after.xor(moved[step]);
    return after;
  }

  /** Whether the two turn a condition in common, or add up in the computing of the wall. */
  private boolean bears(int one, int other) {
    return moved[one].intersects(moved[other])
        || steps.get(one).ofTheWall() && steps.get(other).ofTheWall();
  }
}
