package hornbook.report.record;

import hornbook.report.drawing.DrawingPart;
import hornbook.report.page.Markup;
import hornbook.report.page.PageFrame;
import hornbook.report.words.Sentence;
import java.util.List;

/** A page of the record as HTML that needs nothing beside it. */
public final class RecordHtml {
  private RecordHtml() {}

  public static String render(RecordPage page) {
    Markup html = new Markup();
    PageFrame.begin(html, page.title(), page.title());
    html.open("header").line().element("h1", page.title()).line();
    page.facts().forEach(fact -> html.element("p", fact).line());
    html.close("header").line().open("main").line();
    for (RecordPart part : page.parts()) {
      part(part, html);
    }
    html.close("main").line().open("footer").line();
    page.closing().forEach(line -> html.element("p", line).line());
    html.close("footer").line();
    PageFrame.end(html);
    return html.toString();
  }

  private static void part(RecordPart part, Markup html) {
    html.open("section", "class", part.alarm() ? "referral" : "record").line();
    html.element("h2", Sentence.capital(part.heading())).line();
    if (!part.lines().isEmpty()) {
      html.open("ul").line();
      part.lines().forEach(line -> html.element("li", Sentence.capital(line)).line());
      html.close("ul").line();
    }
    table(part.table(), html);
    for (RecordChart chart : part.charts()) {
      html.element("h3", chart.title()).line();
      html.open("figure").line();
      html.raw(ChartDrawing.svg(chart)).line().close("figure").line();
      if (chart.forecast()) {
        html.element("p", "Dashed bars: where growth would have brought it.", "class", "key")
            .line();
        table(RecordMarkdown.rows(chart), html);
      }
    }
    part.drawings().forEach(one -> DrawingPart.write(List.of(one), html));
    html.close("section").line();
  }

  private static void table(List<List<String>> rows, Markup html) {
    if (rows.isEmpty()) {
      return;
    }
    html.open("table").open("thead").open("tr");
    rows.get(0).forEach(heading -> html.element("th", heading, "scope", "col"));
    html.close("tr").close("thead").open("tbody").line();
    for (List<String> row : rows.subList(1, rows.size())) {
      html.open("tr").element("th", row.get(0), "scope", "row");
      for (int i = 1; i < row.size(); i++) {
        if (row.size() > 2) {
          html.element("td", row.get(i), "data-label", Sentence.capital(rows.get(0).get(i)));
        } else {
          html.element("td", row.get(i));
        }
      }
      html.close("tr").line();
    }
    html.close("tbody").close("table").line();
  }
}
