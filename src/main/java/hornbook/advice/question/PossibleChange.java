package hornbook.advice.question;

import hornbook.advice.QuestionValue;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.RuleConclusion;
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
record PossibleChange(QuestionValue worth, List<String> changes, Urgency urgency) {
  private static final PossibleChange NOTHING_ELSE =
      new PossibleChange(QuestionValue.MEASURE, List.of(), null);

  /** The stake of a rule that is open, given all that may still become of the foot. */
  static PossibleChange of(RuleEntry rule, PossibleOutcomes prospects, Rulebook book) {
    RuleConclusion outcome = rule.outcome();
    if (outcome instanceof RuleConclusion.Refers refers) {
      Urgency told = prospects.told(refers.id());
      boolean sooner = told == null || refers.urgency().compareTo(told) < 0;
      return sooner
          ? new PossibleChange(
              QuestionValue.of(refers.urgency()), List.of("referral"), refers.urgency())
          : NOTHING_ELSE;
    }
    if (outcome instanceof RuleConclusion.Reasons reasons) {
      return ofReason(reasons, prospects, book);
    }
    if (outcome instanceof RuleConclusion.Finds finds) {
      boolean defect = book.findings().get(finds.finding()).defect();
      boolean counts = defect && prospects.found(finds.finding()) != Truth.TRUE;
      return counts && prospects.choiceOpen()
          ? new PossibleChange(QuestionValue.FIRST_CHOICE, first(prospects, book), null)
          : NOTHING_ELSE;
    }
    boolean given = prospects.warned(((RuleConclusion.Cautions) outcome).id());
    return !given && prospects.mayBeOpen(rule.text().techniques())
        ? new PossibleChange(QuestionValue.CAUTION, List.of("caution"), null)
        : NOTHING_ELSE;
  }

  private static PossibleChange ofReason(
      RuleConclusion.Reasons reasons, PossibleOutcomes prospects, Rulebook book) {
    Bearing bearing = reasons.bearing();
    QuestionValue worth = QuestionValue.MEASURE;
    List<String> changes = new ArrayList<>();
    for (String subject : reasons.subjects()) {
      QuestionValue own = worth(subject, bearing, prospects, book);
      if (own.changesAdvice()) {
        changes.add(subject);
        worth = own.compareTo(worth) < 0 ? own : worth;
      }
    }
    return new PossibleChange(worth, changes, null);
  }

  private static QuestionValue worth(
      String subject, Bearing bearing, PossibleOutcomes prospects, Rulebook book) {
    PossibleVerdicts prospect = prospects.of(subject);
    boolean weighed = bearing == Bearing.FOR || bearing == Bearing.AGAINST;
    boolean turns = prospect.turnsOn(bearing);
    if (prospects.mayComeFirst(subject) && (turns || weighed)) {
      return QuestionValue.FIRST_CHOICE;
    }
    if (turns) {
      return book.technique(subject) == null ? QuestionValue.SUPPORT : QuestionValue.VERDICT;
    }
    boolean toPutRight = bearing == Bearing.NEEDS && prospect.mayBeOpen();
    return toPutRight ? QuestionValue.CAUTION : QuestionValue.MEASURE;
  }

  private static List<String> first(PossibleOutcomes prospects, Rulebook book) {
    return book.techniques().stream().map(one -> one.id()).filter(prospects::mayComeFirst).toList();
  }
}
