package hornbook.report.record;

import hornbook.report.page.LineWrap;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Numbers;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A page of the record as plain text, no line wider than a screen. */
public final class RecordText {
  private static final int WIDTH = TextOptions.USUAL_WIDTH;
  private static final String GAP = "  ";
  private static final int BAR = 40;

  private RecordText() {}

  public static String render(RecordPage page) {
    List<String> lines = new ArrayList<>(LineWrap.lines(page.title(), WIDTH, "", GAP));
    page.facts().forEach(fact -> lines.addAll(LineWrap.lines(fact, WIDTH, "", GAP)));
    for (RecordPart part : page.parts()) {
      lines.add("");
      lines.addAll(
          LineWrap.lines("=== " + part.heading().toUpperCase(Locale.ROOT) + " ===", WIDTH, "", ""));
      part.lines()
          .forEach(line -> lines.addAll(LineWrap.lines(Sentence.capital(line), WIDTH, "- ", GAP)));
      table(part.table(), lines);
      part.charts().forEach(chart -> chart(chart, lines));
    }
    lines.add("");
    page.closing().forEach(line -> lines.addAll(LineWrap.lines(line, WIDTH, "", "")));
    return String.join("\n", lines) + "\n";
  }

  /** Columns as wide as their widest cell; what the last has no room for goes on beneath it. */
  private static void table(List<List<String>> rows, List<String> lines) {
    if (rows.isEmpty()) {
      return;
    }
    int last = rows.get(0).size() - 1;
    int[] widest = new int[last];
    int before = GAP.length();
    for (int i = 0; i < last; i++) {
      for (List<String> row : rows) {
        widest[i] = Math.max(widest[i], columns(row.get(i)));
      }
      before += widest[i] + GAP.length();
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(GAP);
      for (int i = 0; i < last; i++) {
        line.append(row.get(i)).append(" ".repeat(widest[i] - columns(row.get(i)))).append(GAP);
      }
      lines.addAll(LineWrap.lines(row.get(last), WIDTH, line.toString(), " ".repeat(before)));
    }
  }

  private static int columns(String text) {
    return text.codePointCount(0, text.length());
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
    char[] bar = new char[BAR + 1];
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
    return (int) Math.round(value / most * BAR);
  }
}
