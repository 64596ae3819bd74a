package hornbook.report.rules;

import hornbook.assessment.quantity.Units;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.page.Markup;
import hornbook.report.page.PageFrame;
import hornbook.report.words.Citations;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.study.review.Review;
import hornbook.study.review.ReviewRow;
import java.util.ArrayList;
import java.util.List;

/** The questionnaire on the limits as a page to print and fill in by hand. */
public final class ReviewPage {
  private static final String TITLE = "Hornbook: limits for the trade to review";

  private static final String SCREEN = "body { font: 10pt sans-serif; }\n";

  /** Room to write in, on a screen and on paper alike. */
  private static final String TABLE =
      """
      table { border-collapse: collapse; width: 100%; }
      td, th { border: 1px solid #666; padding: .3em; text-align: left; vertical-align: top; }
      td:nth-child(n+4) { min-width: 5em; }
      td:last-child { width: 24%; }
      tr { break-inside: avoid; }
      thead { display: table-header-group; }
      @media screen and (max-width: 45em) {
        table { table-layout: fixed; font-size: 7pt; }
        td, th { overflow-wrap: anywhere; padding: .15em; }
        td:nth-child(n+4) { min-width: 0; }
        td:last-child { width: auto; }
      }
      """;

  private static final List<String> ASKED =
      List.of(
          "Each line is a number the program compares feet with. Say whether it is right where you work. If"
              + " not, write the value you use and why.",
          "The first rest on practice or memory alone, with no book: your experience counts most"
              + " there. Leave out what you have no view on.",
          "Name: ______________________________   Years in the trade: ______");

  private static final List<String> HEAD =
      List.of("Limit", "Now", "From", "Right?", "Your value", "Comment");

  private final Phrases phrases;
  private final Citations citations;
  private final List<ReviewRow> rows;

  private ReviewPage(Rulebook book) {
    this.phrases = new Phrases(book, Units.MM);
    this.citations = new Citations(book);
    this.rows = Review.of(book);
  }

  /** As Markdown. */
  public static String markdown(Rulebook book) {
    return new ReviewPage(book).markdown();
  }

  /** As a page for a browser, to print. */
  public static String html(Rulebook book) {
    return new ReviewPage(book).html();
  }

  private String markdown() {
    StringBuilder page = new StringBuilder("# " + TITLE + "\n\n");
    ASKED.forEach(line -> page.append(AdviceMarkdown.escaped(line)).append("\n\n"));
    Basis basis = null;
    for (ReviewRow row : rows) {
      if (row.limit().basis() != basis) {
        basis = row.limit().basis();
        page.append("\n## Basis: ").append(basis.word()).append("\n\n| ");
        page.append(String.join(" | ", HEAD)).append(" |\n").append("| --- ".repeat(HEAD.size()));
        page.append("|\n");
      }
      page.append("| ");
      cells(row).forEach(cell -> page.append(AdviceMarkdown.escaped(cell)).append(" | "));
      page.setLength(page.length() - 1);
      page.append('\n');
    }
    return page.toString();
  }

  private String html() {
    Markup page = new Markup();
    PageFrame.begin(page, TITLE, List.of(SCREEN, TABLE));
    page.open("main").line();
    page.element("h1", TITLE).line();
    ASKED.forEach(line -> page.element("p", line).line());
    Basis basis = null;
    for (ReviewRow row : rows) {
      if (row.limit().basis() != basis) {
        if (basis != null) {
          page.close("tbody").close("table").line();
        }
        basis = row.limit().basis();
        page.element("h2", "Basis: " + basis.word()).line().open("table").open("thead").open("tr");
        HEAD.forEach(cell -> page.element("th", cell, "scope", "col"));
        page.close("tr").close("thead").open("tbody").line();
      }
      page.open("tr");
      cells(row).forEach(cell -> page.element("td", cell));
      page.close("tr").line();
    }
    page.close("tbody").close("table").line();
    page.close("main").line();
    PageFrame.end(page);
    return page.toString();
  }

  private List<String> cells(ReviewRow row) {
    Limit limit = row.limit();
    String side = limit.direction() == Limit.Direction.AT_LEAST ? "at least " : "at most ";
    List<String> cells = new ArrayList<>();
    cells.add(limit.label() + RuleWords.where(limit) + " (" + limit.id() + ")");
    cells.add(side + phrases.of(limit));
    cells.add(citations.brief(limit.source()) + ", " + citations.locator(limit));
    cells.add("yes / no");
    cells.add("");
    cells.add("");
    return cells;
  }
}
