package hornbook.report.sheet;

import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.report.advice.PageHead;
import hornbook.report.page.LineWrap;
import hornbook.report.page.TextOptions;
import hornbook.report.sheet.PlanSection.Block;
import hornbook.report.sheet.PlanSection.Drawing;
import hornbook.report.sheet.PlanSection.Lines;
import hornbook.report.sheet.PlanSection.Table;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;

/** Writes a job sheet as plain text, to be worked from. */
public final class PlanText {
  private static final String GAP = "  ";

  private PlanText() {}

  /** The whole sheet, no line wider than 80 columns. */
  public static String render(Plan plan, Units units) {
    int width = TextOptions.USUAL_WIDTH;
    List<String> lines = new ArrayList<>();
    lines.addAll(
        LineWrap.lines("Hornbook job sheet: " + PageHead.title(plan.advice()), width, "", GAP));
    lines.addAll(LineWrap.lines(PlanPage.title(plan), width, "", GAP));
    lines.addAll(LineWrap.lines(PageHead.SAFETY, width, "", ""));
    for (PlanSection section : PlanPage.of(plan, units)) {
      lines.add("");
      lines.add("=== " + section.heading() + " ===");
      section.blocks().forEach(block -> block(block, width, lines));
    }
    lines.add("");
    lines.addAll(LineWrap.lines(PageHead.rulebook(plan.advice()), width, "", GAP));
    return String.join("\n", lines) + "\n";
  }

  private static void block(Block block, int width, List<String> lines) {
    if (block instanceof Lines some) {
      some.lines()
          .forEach(line -> lines.addAll(LineWrap.lines(Sentence.capital(line), width, "- ", GAP)));
    } else if (block instanceof Drawing drawing) {
      lines.addAll(drawing.lines());
    } else if (block instanceof Table table) {
      table(table, width, lines);
    }
  }

  /** Columns as wide as their widest cell; what the last has no room for goes on beneath it. */
  private static void table(Table table, int width, List<String> lines) {
    int last = table.rows().get(0).size() - 1;
    int[] widest = new int[last];
    int before = GAP.length();
    for (int i = 0; i < last; i++) {
      for (List<String> row : table.rows()) {
        widest[i] = Math.max(widest[i], row.get(i).length());
      }
      before += widest[i] + GAP.length();
    }
    for (List<String> row : table.rows()) {
      StringBuilder line = new StringBuilder(GAP);
      for (int i = 0; i < last; i++) {
        line.append(padded(row.get(i), widest[i])).append(GAP);
      }
      lines.addAll(LineWrap.lines(row.get(last), width, line.toString(), " ".repeat(before)));
    }
  }

  private static String padded(String cell, int room) {
    return cell.length() >= room ? cell : cell + " ".repeat(room - cell.length());
  }
}
