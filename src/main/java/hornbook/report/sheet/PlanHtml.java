package hornbook.report.sheet;

import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.report.advice.PageHead;
import hornbook.report.drawing.Drawing;
import hornbook.report.drawing.DrawingPart;
import hornbook.report.drawing.Drawings;
import hornbook.report.drawing.Picture;
import hornbook.report.page.Fold;
import hornbook.report.page.Markup;
import hornbook.report.page.PageFrame;
import hornbook.report.sheet.PlanSection.Block;
import hornbook.report.sheet.PlanSection.Lines;
import hornbook.report.sheet.PlanSection.Table;
import hornbook.report.words.Amounts;
import hornbook.report.words.Detail;
import hornbook.report.words.Sentence;
import java.util.List;
import java.util.Set;

/**
 * Writes a job sheet as one page that needs nothing beside it, with drawings of the foot before and
 * after in place of those in plain characters.
 */
public final class PlanHtml {
  /** What is not needed at the foot: on a telephone it is folded. */
  private static final Set<String> LAST =
      Set.of("WHERE THE NUMBERS COME FROM", "WHAT THEY REST ON", "SOURCES");

  private final Plan plan;
  private final Markup page = new Markup();
  private final Detail detail;
  private final List<Drawing> drawings;

  private PlanHtml(Plan plan, Units units, Detail detail) {
    this.plan = plan;
    this.detail = detail;
    this.drawings =
        plan.workable() && detail != Detail.BRIEF
            ? Drawings.of(plan, new Amounts(units))
            : List.of();
  }

  public static String render(Plan plan, Units units) {
    return render(plan, units, Detail.FULL);
  }

  /** The whole sheet, or one page of it without drawings. */
  public static String render(Plan plan, Units units, Detail detail) {
    PlanHtml html = new PlanHtml(plan, units, detail);
    html.write(PlanPage.of(plan, units, detail));
    return html.page.toString();
  }

  private void write(List<PlanSection> sections) {
    String title = "Hornbook job sheet: " + PageHead.title(plan.advice());
    PageFrame.begin(page, title, PageHead.title(plan.advice()));
    page.open("header").line().element("h1", title).line();
    page.element("p", PageHead.SAFETY, "class", "safety").line().close("header").line();
    page.open("main").line();
    if (detail == Detail.BRIEF) {
      page.open("article", "class", "brief").line();
    } else {
      page.open("article").line();
    }
    page.element("h2", PlanPage.title(plan)).line();
    sections.forEach(this::section);
    page.close("article").line().close("main").line();
    page.open("footer").element("p", PageHead.rulebook(plan.advice())).close("footer").line();
    PageFrame.end(page);
  }

  private void section(PlanSection section) {
    boolean alarm = !plan.stops().isEmpty() && section.heading().startsWith("THE VET");
    page.open("section", "class", alarm ? "referral" : "work").line();
    boolean folded = LAST.contains(section.heading());
    if (folded) {
      Fold.begin(section.heading(), false, page);
    } else {
      page.element("h3", section.heading()).line();
    }
    for (Block block : section.blocks()) {
      if (block instanceof Lines lines) {
        lines(lines);
      } else if (block instanceof Table table) {
        table(table);
      }
    }
    if (folded) {
      Fold.end(page);
    }
    page.close("section").line();
    switch (section.heading()) {
      case "NAILS", PlanPage.WALL_ONLY -> drawn(Picture.GROUND, Picture.WALL);
      case "WHAT IT DOES TO THE FOOT" -> drawn(Picture.SIDE);
      case "GROWTH AND NEXT VISIT" -> drawn(Picture.GROWTH);
      default -> {
        // no drawing belongs here
      }
    }
  }

  private void drawn(Picture... pictures) {
    for (Picture picture : pictures) {
      DrawingPart.write(drawings.stream().filter(one -> one.picture() == picture).toList(), page);
    }
  }

  private void lines(Lines lines) {
    page.open("ul").line();
    lines.lines().forEach(line -> page.element("li", Sentence.capital(line)).line());
    page.close("ul").line();
  }

  /** Cells carry the head of their column, for screens too narrow to show it above them. */
  private void table(Table table) {
    List<String> heads = table.rows().get(0);
    page.open("table").open("thead").open("tr");
    heads.forEach(head -> page.element(head.isEmpty() ? "td" : "th", head, scope(head)));
    page.close("tr").close("thead").open("tbody").line();
    for (List<String> row : table.rows().subList(1, table.rows().size())) {
      page.open("tr").element("th", Sentence.capital(row.get(0)), "scope", "row");
      for (int i = 1; i < row.size(); i++) {
        page.element("td", row.get(i), "data-label", Sentence.capital(heads.get(i)));
      }
      page.close("tr").line();
    }
    page.close("tbody").close("table").line();
  }

  private static Object[] scope(String cell) {
    return cell.isEmpty() ? new Object[0] : new Object[] {"scope", "col"};
  }
}
