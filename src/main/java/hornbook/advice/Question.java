package hornbook.advice;

import hornbook.rulebook.fact.Urgency;
import java.util.List;

/**
 * Something not looked at that could change the advice.
 *
 * @param field the path in the assessment
 * @param why the title of the weightiest rule it could bring to bear
 * @param couldChange {@code referral}, names of techniques and supports, or {@code caution}; empty
 *     where only a reason more could be told
 * @param urgency the most urgent referral it could bring, or null
 * @param worth how much it could matter
 * @param alone whether that hangs on this answer alone, nothing else being unknown
 */
public record Question(
    String field,
    String why,
    List<String> couldChange,
    Urgency urgency,
    QuestionValue worth,
    boolean alone) {
  /**
   * Whether the advice cannot be relied on until this is answered: the vet might be needed today.
   */
  public boolean provisional() {
    return urgency != null && urgency.compareTo(Urgency.TODAY) <= 0;
  }
}
