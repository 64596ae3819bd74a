package hornbook.study.explain;

import hornbook.advice.OptionAdvice;
import hornbook.advice.VerdictBasis;
import hornbook.assessment.field.FieldValue;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import java.util.List;

/** How the advice stands to what was asked about, in one sentence. */
public sealed interface Answer {
  /** The verdict on a technique or a support, and what settled it. */
  record Judgement(OptionAdvice judged, VerdictBasis settled) implements Answer {}

  /**
   * Whether a finding was made, a call or a warning given, or whether a rule fired.
   *
   * @param closedFor the techniques a caution belongs to where it is not given because none of them
   *     is open; else empty
   */
  record Given(boolean given, List<String> closedFor) implements Answer {}

  /**
   * What is known of a number or a word.
   *
   * @param reading the number, or null
   * @param seen the words, or empty
   * @param noted the fields it rests on
   */
  record Known(Reading reading, List<Seen> seen, List<FieldValue> noted) implements Answer {
    /** Whether anything is known of it. */
    public boolean known() {
      return reading != null || !seen.isEmpty();
    }
  }
}
