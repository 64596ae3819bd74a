package hornbook.report.sheet;

import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.PageHead;
import hornbook.report.sheet.PlanSection.Block;
import hornbook.report.sheet.PlanSection.Drawing;
import hornbook.report.sheet.PlanSection.Lines;
import hornbook.report.sheet.PlanSection.Table;
import hornbook.report.words.Detail;
import hornbook.report.words.Sentence;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a job sheet as Markdown. */
public final class PlanMarkdown {
  private PlanMarkdown() {}

  public static String render(Plan plan, Units units) {
    return render(plan, units, Detail.FULL);
  }

  /** The whole sheet, or one page of it. */
  public static String render(Plan plan, Units units, Detail detail) {
    StringBuilder page = new StringBuilder();
    page.append("# Hornbook job sheet: ")
        .append(AdviceMarkdown.escaped(PageHead.title(plan.advice())))
        .append("\n\n**")
        .append(AdviceMarkdown.escaped(PlanPage.title(plan)))
        .append("**\n\n> ")
        .append(AdviceMarkdown.escaped(PageHead.SAFETY))
        .append('\n');
    for (PlanSection section : PlanPage.of(plan, units, detail)) {
      page.append("\n## ")
          .append(
              AdviceMarkdown.escaped(Sentence.capital(section.heading().toLowerCase(Locale.ROOT))))
          .append('\n');
      section.blocks().forEach(block -> block(block, page));
    }
    return page.append('\n')
        .append(AdviceMarkdown.escaped(PageHead.rulebook(plan.advice())))
        .append('\n')
        .toString();
  }

  private static void block(Block block, StringBuilder page) {
    page.append('\n');
    if (block instanceof Lines some) {
      some.lines()
          .forEach(
              line ->
                  page.append("- ")
                      .append(AdviceMarkdown.escaped(Sentence.capital(line)))
                      .append('\n'));
    } else if (block instanceof Drawing drawing) {
      page.append("```text\n").append(String.join("\n", drawing.lines())).append("\n```\n");
    } else if (block instanceof Table table) {
      table(table, page);
    }
  }

  private static void table(Table table, StringBuilder page) {
    row(table.rows().get(0), page);
    page.append("|").append(" --- |".repeat(table.rows().get(0).size())).append('\n');
    table.rows().stream().skip(1).forEach(row -> row(row, page));
  }

  private static void row(List<String> cells, StringBuilder page) {
    page.append("| ")
        .append(cells.stream().map(AdviceMarkdown::escaped).collect(Collectors.joining(" | ")))
        .append(" |\n");
  }
}
