package hornbook.study.contrast;

import java.util.BitSet;

/**
 * The rules that keep what is asked for from use on the foot as noted. Whatever brings it about has
 * to silence every one of them, which is quickly seen.
 */
final class BlockingRules {
  private static final int MOST = Long.SIZE - 1;

  private final WhatIf foot;
  private final String subject;
  private final int[] rules;

  /**
   * @param subject a technique or support, or null where none is asked for
   */
  BlockingRules(WhatIf foot, String subject) {
    this.foot = foot;
    this.subject = subject;
    this.rules =
        subject == null
            ? new int[0]
            : foot.barring(foot.met(), subject).stream().limit(MOST).toArray();
  }

  /** One bit for each barrier that is gone on a foot that meets these conditions. */
  long gone(BitSet met) {
    if (rules.length == 0) {
      return 0;
    }
    BitSet barring = foot.barring(met, subject);
    long gone = 0;
    for (int at = 0; at < rules.length; at++) {
      gone |= barring.get(rules[at]) ? 0 : 1L << at;
    }
    return gone;
  }

  /** Whether all are among those gone. */
  boolean all(long gone) {
    return gone == (1L << rules.length) - 1;
  }
}
