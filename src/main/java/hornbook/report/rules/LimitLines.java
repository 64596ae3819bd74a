package hornbook.report.rules;

import hornbook.report.page.PlainPage;
import hornbook.report.words.Citations;
import hornbook.report.words.LimitText;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.fact.Limit;

/** A limit in a few lines: value, ground, the safe way to move it, and who disagrees. */
public final class LimitLines {
  private final Phrases phrases;
  private final Citations citations;

  LimitLines(Phrases phrases, Citations citations) {
    this.phrases = phrases;
    this.citations = citations;
  }

  void add(PlainPage page, Limit limit) {
    page.hanging(2, 4, limit.id() + RuleWords.where(limit) + ": " + limit.label());
    page.paragraph(
        4, value(phrases, limit) + "; basis: " + limit.basis().word() + "; " + from(limit));
    if (limit.safer() != Limit.Safer.NEITHER) {
      page.paragraph(4, "safer: " + (limit.safer() == Limit.Safer.UP ? "higher" : "lower"));
    }
    for (Limit.Dispute dispute : limit.disputes()) {
      page.hanging(4, 6, "but " + new LimitText(phrases, citations).other(limit, dispute));
    }
  }

  /** The side that is asked for and the value: {@code at least 2}. */
  public static String value(Phrases phrases, Limit limit) {
    String side = limit.direction() == Limit.Direction.AT_LEAST ? "at least " : "at most ";
    return side + phrases.of(limit) + (limit.inclusive() ? "" : ", itself not counted");
  }

  private String from(Limit limit) {
    return citations.brief(limit.source()) + ", " + citations.locator(limit);
  }
}
