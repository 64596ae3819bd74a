package hornbook.study.explain;

import hornbook.advice.FootAdvice;
import hornbook.advice.VerdictBasis;
import java.util.List;

/**
 * Why something is so on a foot, or why not.
 *
 * @param whyNot whether it was asked why not
 * @param deciding the rules that settle it, the weightiest first; they fired, or stayed silent
 * @param further the other rules that fired and bear on it
 * @param silent the other rules that could bear on it and stayed silent
 */
public record Explanation(
    Subject subject,
    boolean whyNot,
    FootAdvice foot,
    Answer answer,
    List<RuleChain> deciding,
    List<RuleChain> further,
    List<RuleChain> silent) {

  /** Whether the question does not arise, since the matter stands the other way round. */
  public boolean contrary() {
    if (answer instanceof Answer.Judgement judgement) {
      return whyNot
          == switch (judgement.judged().verdict()) {
            case FIRST_CHOICE -> true;
            case WORKABLE -> judgement.settled().by() == VerdictBasis.By.MAY_BE_USED;
            case WITH_VET, NOT_INDICATED, RULED_OUT -> false;
          };
    }
    return answer instanceof Answer.Given given && given.given() == whyNot;
  }
}
