package hornbook.report.record;

import java.util.List;

/**
 * A part of a page: lines, then a table, then a chart, as far as there are any.
 *
 * @param alarm whether it calls for the vet
 * @param table rows of cells, the first of headings
 * @param charts numbers over the visits
 */
public record RecordPart(
    String heading,
    boolean alarm,
    List<String> lines,
    List<List<String>> table,
    List<RecordChart> charts) {
  public RecordPart {
    lines = List.copyOf(lines);
    table = List.copyOf(table);
    charts = List.copyOf(charts);
  }

  public static RecordPart of(String heading, List<String> lines) {
    return new RecordPart(heading, false, lines, List.of(), List.of());
  }

  /** A part that calls for the vet. */
  public static RecordPart alarm(String heading, List<String> lines) {
    return new RecordPart(heading, true, lines, List.of(), List.of());
  }

  public static RecordPart table(String heading, List<List<String>> rows) {
    return new RecordPart(heading, false, List.of(), rows.size() > 1 ? rows : List.of(), List.of());
  }

  boolean empty() {
    return lines.isEmpty() && table.isEmpty() && charts.isEmpty();
  }
}
