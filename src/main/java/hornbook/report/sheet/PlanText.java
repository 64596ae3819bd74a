package hornbook.report.sheet;

import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.report.advice.PageHead;
import hornbook.report.page.LineWrap;
import hornbook.report.page.PageWidth;
import hornbook.report.page.TextTable;
import hornbook.report.sheet.PlanSection.Block;
import hornbook.report.sheet.PlanSection.Drawing;
import hornbook.report.sheet.PlanSection.Lines;
import hornbook.report.sheet.PlanSection.Table;
import hornbook.report.words.Detail;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;

/** Writes a job sheet as plain text, to be worked from. */
public final class PlanText {
  private static final String GAP = "  ";

  private PlanText() {}

  /** The whole sheet, no line wider than the screen. */
  public static String render(Plan plan, Units units) {
    return render(plan, units, Detail.FULL);
  }

  /** The same, or one page of it. */
  public static String render(Plan plan, Units units, Detail detail) {
    int width = PageWidth.columns();
    List<String> lines = new ArrayList<>();
    lines.addAll(
        LineWrap.lines("Hornbook job sheet: " + PageHead.title(plan.advice()), width, "", GAP));
    lines.addAll(LineWrap.lines(PlanPage.title(plan), width, "", GAP));
    lines.addAll(LineWrap.lines(PageHead.SAFETY, width, "", ""));
    for (PlanSection section : PlanPage.of(plan, units, detail)) {
      if (detail != Detail.BRIEF) {
        lines.add("");
      }
      lines.addAll(LineWrap.lines("=== " + section.heading() + " ===", width, "", ""));
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
      lines.addAll(TextTable.lines(table.rows(), GAP.length(), width));
    }
  }
}
