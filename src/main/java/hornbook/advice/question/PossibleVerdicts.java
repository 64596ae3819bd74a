package hornbook.advice.question;

import hornbook.advice.Verdict;
import hornbook.advice.VerdictOrder;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.fact.Bearing;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/**
 * The verdicts a technique or support may come to, whatever the unknown turns out to be. Rules only
 * the unknown keeps silent are taken to fire or not, each by itself: a verdict may be counted that
 * never comes about, but none that does is left out.
 */
final class PossibleVerdicts {
  private final Map<Bearing, Truth> bearings = new EnumMap<>(Bearing.class);
  private Set<Verdict> verdicts;

  /** A rule that bears on it, fired or open. */
  void add(Bearing bearing, Truth fires) {
    bearings.merge(bearing, fires, Truth::or);
  }

  Truth of(Bearing bearing) {
    return bearings.getOrDefault(bearing, Truth.FALSE);
  }

  /**
   * Settles the verdicts by the one order of questions.
   *
   * @param now whether some referral is for now
   * @param today whether some referral is for today
   * @param vetDirects whether a vet has taken the case in hand
   */
  void settle(Truth now, Truth today, Truth vetDirects) {
    verdicts =
        VerdictOrder.possible(
            of(Bearing.RULES_OUT),
            now,
            vetDirects,
            of(Bearing.FOR),
            today.or(of(Bearing.NEEDS_VET)));
  }

  boolean settled() {
    return verdicts.size() == 1;
  }

  /**
   * The verdict it has come to.
   *
   * @throws IllegalStateException when it is open
   */
  Verdict verdict() {
    if (!settled()) {
      throw new IllegalStateException("the verdict is open");
    }
    return verdicts.iterator().next();
  }

  boolean may(Verdict verdict) {
    return verdicts.contains(verdict);
  }

  boolean mayBeOpen() {
    return may(Verdict.WORKABLE) || may(Verdict.WITH_VET);
  }

  boolean certainlyOpen() {
    return !may(Verdict.RULED_OUT) && !may(Verdict.NOT_INDICATED);
  }

  /** Whether one more rule of this bearing could turn the verdict. */
  boolean turnsOn(Bearing bearing) {
    return switch (bearing) {
      case RULES_OUT -> !(settled() && may(Verdict.RULED_OUT));
      case NEEDS_VET -> may(Verdict.WORKABLE);
      case FOR -> of(Bearing.FOR) != Truth.TRUE && mayBeOpen() && !settled();
      case AGAINST, NEEDS -> false;
    };
  }
}
