package hornbook.report.record;

import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.words.Numbers;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A page of the record as Markdown. */
public final class RecordMarkdown {
  private RecordMarkdown() {}

  public static String render(RecordPage page) {
    StringBuilder text = new StringBuilder("# " + escaped(page.title()) + "\n");
    page.facts().forEach(fact -> text.append('\n').append(escaped(fact)).append('\n'));
    for (RecordPart part : page.parts()) {
      String heading = Sentence.capital(part.heading().toLowerCase(Locale.ROOT));
      text.append("\n## ").append(escaped(heading)).append('\n');
      if (!part.lines().isEmpty()) {
        text.append('\n');
      }
      part.lines()
          .forEach(line -> text.append("- ").append(escaped(Sentence.capital(line))).append('\n'));
      table(part.table(), text);
      part.charts().stream()
          .filter(RecordChart::forecast)
          .forEach(chart -> table(rows(chart), text));
    }
    page.closing().forEach(line -> text.append("\n> ").append(escaped(line)).append('\n'));
    return text.toString();
  }

  /** A chart by its numbers. */
  static List<List<String>> rows(RecordChart chart) {
    List<List<String>> rows = new ArrayList<>();
    String unit = chart.unit().isEmpty() ? "" : ", " + chart.unit();
    rows.add(List.of("Visit", chart.title() + unit, "Forecast at the visit before"));
    for (RecordChart.Point point : chart.points()) {
      rows.add(
          List.of(
              point.when(),
              point.measured() ? Numbers.rounded(point.value(), 1) : "not measured",
              point.forecast()
                  ? Numbers.rounded(point.low(), 1) + " to " + Numbers.rounded(point.high(), 1)
                  : ""));
    }
    return rows;
  }

  private static void table(List<List<String>> rows, StringBuilder text) {
    if (rows.isEmpty()) {
      return;
    }
    text.append('\n');
    row(rows.get(0), text);
    text.append("|").append(" --- |".repeat(rows.get(0).size())).append('\n');
    rows.stream().skip(1).forEach(row -> row(row, text));
  }

  private static void row(List<String> cells, StringBuilder text) {
    text.append("| ")
        .append(cells.stream().map(RecordMarkdown::escaped).collect(Collectors.joining(" | ")))
        .append(" |\n");
  }

  private static String escaped(String text) {
    return AdviceMarkdown.escaped(text);
  }
}
