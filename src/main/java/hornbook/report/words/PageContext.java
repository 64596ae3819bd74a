package hornbook.report.words;

import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;

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

  /** A rule's title with its id: {@code A corn (B028)}. */
  public String title(String id) {
    return rule(id).title() + " (" + id + ")";
  }

  /** The name of a technique or a support in words of the trade. */
  public String label(String id) {
    return book().technique(id) == null ? book().support(id).label() : book().technique(id).label();
  }
}
