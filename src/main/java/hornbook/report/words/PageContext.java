package hornbook.report.words;

import hornbook.advice.Advice;
import hornbook.advice.Statement;
import hornbook.assessment.quantity.Units;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;

/** What every part of a page needs to put the advice into words. */
public record PageContext(Advice advice, Phrases phrases, Citations citations, Detail detail) {
  public static PageContext of(Advice advice, Units units, Detail detail) {
    Rulebook book = advice.rulebook();
    return new PageContext(advice, new Phrases(book, units), new Citations(book), detail);
  }

  public Rulebook book() {
    return advice.rulebook();
  }

  public RuleEntry rule(String id) {
    return book().rules().get(id);
  }

  /**
   * A sentence with the ground it rests on: in full also that of the sentence as a whole, else
   * beside each limit only.
   */
  public String grounded(Statement says, Basis basis) {
    return detail == Detail.FULL ? phrases.grounded(says, basis) : phrases.limitsGrounded(says);
  }

  /** A rule's title with its id: {@code A corn (B028)}. */
  public String title(String id) {
    return rule(id).title() + " (" + id + ")";
  }

  /** The name of a technique or a support in words of the trade. */
  public String label(String id) {
    return book().technique(id) == null ? book().support(id).label() : book().technique(id).label();
  }
}
