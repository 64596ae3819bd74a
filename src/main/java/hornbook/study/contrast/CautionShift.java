package hornbook.study.contrast;

import hornbook.advice.Verdict;
import hornbook.advice.outcome.Outcome;
import hornbook.rulebook.fact.Urgency;
import java.util.Map;

/** Which way the advice goes. */
public enum CautionShift {
  /** The vet is called that was not, or sooner; or something is closed that was open. */
  MORE,
  /** Neither. */
  OTHER,
  /**
   * The vet is called no longer, or later; or something is open that was ruled out or the vet's.
   * Where other things go the other way at the same time, this counts.
   */
  LESS;

  /** From the advice as noted to other advice. */
  static CautionShift between(Outcome noted, Outcome other) {
    if (eased(noted, other)) {
      return LESS;
    }
    return eased(other, noted) ? MORE : OTHER;
  }

  private static boolean eased(Outcome from, Outcome to) {
    for (Map.Entry<String, Urgency> call : from.referrals().entrySet()) {
      Urgency then = to.referrals().get(call.getKey());
      if (then == null || then.compareTo(call.getValue()) > 0) {
        return true;
      }
    }
    return eased(from.techniques(), to.techniques()) || eased(from.supports(), to.supports());
  }

  private static boolean eased(Map<String, Verdict> from, Map<String, Verdict> to) {
    for (Map.Entry<String, Verdict> one : from.entrySet()) {
      Verdict then = to.get(one.getKey());
      boolean barFalls = one.getValue() == Verdict.RULED_OUT && then != Verdict.RULED_OUT;
      boolean usable = then == Verdict.WORKABLE || then == Verdict.FIRST_CHOICE;
      if (barFalls || one.getValue() == Verdict.WITH_VET && usable) {
        return true;
      }
    }
    return false;
  }
}
