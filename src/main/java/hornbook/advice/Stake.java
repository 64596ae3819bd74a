package hornbook.advice;

import hornbook.rulebook.Outcome;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.List;

/**
 * What could still change if a rule that only the unknown keeps silent fired.
 *
 * @param changes {@code referral}, names of techniques and supports, or {@code caution}
 * @param urgency of the referral it would bring, or null
 */
record Stake(Worth worth, List<String> changes, Urgency urgency) {
  private static final Stake NOTHING_ELSE = new Stake(Worth.MEASURE, List.of(), null);

  /** The stake of a rule that is open, given all that may still become of the foot. */
  static Stake of(RuleEntry rule, Prospects prospects, Rulebook book) {
    Outcome outcome = rule.outcome();
    if (outcome instanceof Outcome.Refers refers) {
      Urgency told = prospects.told(refers.id());
      boolean sooner = told == null || refers.urgency().compareTo(told) < 0;
      return sooner
          ? new Stake(Worth.of(refers.urgency()), List.of("referral"), refers.urgency())
          : NOTHING_ELSE;
    }
    if (outcome instanceof Outcome.Reasons reasons) {
      return ofReason(reasons, prospects, book);
    }
    if (outcome instanceof Outcome.Finds finds) {
      boolean defect = book.findings().get(finds.finding()).defect();
      boolean counts = defect && prospects.found(finds.finding()) != Truth.TRUE;
      return counts && prospects.choiceOpen()
          ? new Stake(Worth.FIRST_CHOICE, first(prospects, book), null)
          : NOTHING_ELSE;
    }
    boolean given = prospects.warned(((Outcome.Cautions) outcome).id());
    return !given && prospects.mayBeOpen(rule.text().techniques())
        ? new Stake(Worth.CAUTION, List.of("caution"), null)
        : NOTHING_ELSE;
  }

  private static Stake ofReason(Outcome.Reasons reasons, Prospects prospects, Rulebook book) {
    Bearing bearing = reasons.bearing();
    Worth worth = Worth.MEASURE;
    List<String> changes = new ArrayList<>();
    for (String subject : reasons.subjects()) {
      Worth own = worth(subject, bearing, prospects, book);
      if (own.changesAdvice()) {
        changes.add(subject);
        worth = own.compareTo(worth) < 0 ? own : worth;
      }
    }
    return new Stake(worth, changes, null);
  }

  private static Worth worth(String subject, Bearing bearing, Prospects prospects, Rulebook book) {
    Prospect prospect = prospects.of(subject);
    boolean weighed = bearing == Bearing.FOR || bearing == Bearing.AGAINST;
    boolean turns = prospect.turnsOn(bearing);
    if (prospects.mayComeFirst(subject) && (turns || weighed)) {
      return Worth.FIRST_CHOICE;
    }
    if (turns) {
      return book.technique(subject) == null ? Worth.SUPPORT : Worth.VERDICT;
    }
    boolean toPutRight = bearing == Bearing.NEEDS && prospect.mayBeOpen();
    return toPutRight ? Worth.CAUTION : Worth.MEASURE;
  }

  private static List<String> first(Prospects prospects, Rulebook book) {
    return book.techniques().stream().map(one -> one.id()).filter(prospects::mayComeFirst).toList();
  }
}
