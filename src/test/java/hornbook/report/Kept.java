package hornbook.report;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.assessment.quantity.Units;
import hornbook.report.words.Phrases;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.List;

/**
 * What no page may drop: every call for now or today by name with what to do meanwhile, and what
 * has to be done before the first choice or speaks against it.
 */
public final class Kept {
  private Kept() {}

  /** Titles and sentences. */
  public static List<String> of(Advice advice) {
    return of(advice, true);
  }

  /** The sentences alone. */
  public static List<String> said(Advice advice) {
    return of(advice, false);
  }

  private static List<String> of(Advice advice, boolean titles) {
    Phrases phrases = new Phrases(advice.rulebook(), Units.MM);
    List<String> kept = new ArrayList<>();
    for (FootAdvice foot : advice.feet()) {
      for (ReferralGiven call : foot.referrals()) {
        if (call.urgency().compareTo(Urgency.TODAY) <= 0) {
          if (titles) {
            kept.add(advice.rulebook().rules().get(call.rule()).title());
          }
          kept.add(phrases.says(call.meanwhile()));
        }
      }
      foot.firstChoice().ifPresent(first -> conditions(first, phrases, kept));
    }
    return kept;
  }

  private static void conditions(OptionAdvice first, Phrases phrases, List<String> kept) {
    for (ReasonGiven reason : first.reasons()) {
      if (reason.bearing() == Bearing.NEEDS || reason.bearing() == Bearing.AGAINST) {
        kept.add(phrases.says(reason.says()));
      }
    }
  }
}
