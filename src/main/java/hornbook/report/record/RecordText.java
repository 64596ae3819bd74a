package hornbook.report.record;

import hornbook.report.page.LineWrap;
import hornbook.report.page.PageWidth;
import hornbook.report.page.TextTable;
import hornbook.report.words.Numbers;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A page of the record as plain text, no line wider than a screen. */
public final class RecordText {
  private static final String GAP = "  ";

  /** Columns of a line that are not its bar. */
  private static final int BESIDE = 24;

  private static final int LONGEST_BAR = 40;

  private RecordText() {}

  public static String render(RecordPage page) {
    int width = PageWidth.columns();
    List<String> lines = new ArrayList<>(LineWrap.lines(page.title(), width, "", GAP));
    page.facts().forEach(fact -> lines.addAll(LineWrap.lines(fact, width, "", GAP)));
    for (RecordPart part : page.parts()) {
      lines.add("");
      lines.addAll(
          LineWrap.lines("=== " + part.heading().toUpperCase(Locale.ROOT) + " ===", width, "", ""));
      part.lines()
          .forEach(line -> lines.addAll(LineWrap.lines(Sentence.capital(line), width, "- ", GAP)));
      lines.addAll(TextTable.lines(part.table(), GAP.length(), width));
      part.charts().forEach(chart -> chart(chart, lines));
    }
    lines.add("");
    page.closing().forEach(line -> lines.addAll(LineWrap.lines(line, width, "", "")));
    return String.join("\n", lines) + "\n";
  }

  /** A bar a visit; brackets stand where the forecast of the visit before had it. */
  private static void chart(RecordChart chart, List<String> lines) {
    lines.add("");
    String unit = chart.unit().isEmpty() ? "" : ", " + chart.unit();
    lines.add(GAP + chart.title() + unit);
    double most = Math.max(1, chart.most());
    for (RecordChart.Point point : chart.points()) {
      String value = point.measured() ? Numbers.rounded(point.value(), 1) : "?";
      lines.add(
          String.format(Locale.ROOT, "  %-12s %6s |%s", point.when(), value, bar(point, most)));
    }
    if (chart.forecast()) {
      lines.add("  [ ] where growth since the visit before would have brought it");
    }
  }

  private static String bar(RecordChart.Point point, double most) {
    char[] bar = new char[longest() + 1];
    Arrays.fill(bar, ' ');
    int filled = point.measured() ? place(point.value(), most) : 0;
    Arrays.fill(bar, 0, filled, '#');
    if (point.forecast()) {
      bar[place(point.low(), most)] = '[';
      bar[place(point.high(), most)] = ']';
    }
    return new String(bar).stripTrailing();
  }

  private static int place(double value, double most) {
    return (int) Math.round(value / most * longest());
  }

  private static int longest() {
    return Math.min(LONGEST_BAR, PageWidth.columns() - BESIDE);
  }
}
