package hornbook.report.rules;

import hornbook.assessment.quantity.Units;
import hornbook.report.page.PlainPage;
import hornbook.report.words.Numbers;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.review.ReviewTally;
import java.util.List;

/** What the trade answered, limit by limit, in plain text. */
public final class ReviewText {
  private ReviewText() {}

  /**
   * The page; nothing of the rule base is changed by it.
   *
   * @param people how many different people answered
   */
  public static String render(Rulebook book, List<ReviewTally> tallies, int people) {
    Phrases phrases = new Phrases(book, Units.MM);
    PlainPage page = new PlainPage();
    String limits = Numbers.counted(tallies.size(), "limit");
    page.heading(
        (people == 1 ? "1 person" : people + " people")
            + " on "
            + limits
            + ". Nothing is changed.");
    for (ReviewTally tally : tallies) {
      Limit limit = tally.limit();
      page.heading(limit.id() + RuleWords.where(limit) + ": " + limit.label());
      page.paragraph(
          2,
          "now "
              + phrases.of(limit)
              + " ("
              + limit.basis().word()
              + "); "
              + (tally.people() == 1 ? "1 person: " : tally.people() + " people: ")
              + tally.agree()
              + " agree, "
              + tally.disagree()
              + " disagree");
      if (!tally.proposed().isEmpty()) {
        List<Double> all = tally.proposed();
        page.paragraph(
            2,
            "proposed: median "
                + amount(phrases, limit, tally.median())
                + ", from "
                + amount(phrases, limit, all.get(0))
                + " to "
                + amount(phrases, limit, all.get(all.size() - 1))
                + ", by "
                + all.size());
      }
      tally.comments().forEach(comment -> page.hanging(2, 4, "- " + comment));
    }
    return page.text();
  }

  private static String amount(Phrases phrases, Limit limit, double value) {
    return phrases.of(limit.withValue(value));
  }
}
