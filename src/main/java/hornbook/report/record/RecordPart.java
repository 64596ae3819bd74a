package hornbook.report.record;

import hornbook.report.drawing.Drawing;
import java.util.List;

/**
 * A part of a page: lines, then a table, then charts and drawings, as far as there are any.
 *
 * @param alarm whether it calls for the vet
 * @param table rows of cells, the first of headings
 * @param charts numbers over the visits
 * @param drawings of one foot, for pages that can show them
 */
public record RecordPart(
    String heading,
    boolean alarm,
    List<String> lines,
    List<List<String>> table,
    List<RecordChart> charts,
    List<Drawing> drawings) {
  public RecordPart {
    lines = List.copyOf(lines);
    table = List.copyOf(table);
    charts = List.copyOf(charts);
    drawings = List.copyOf(drawings);
  }

  public static RecordPart of(String heading, List<String> lines) {
    return new RecordPart(heading, false, lines, List.of(), List.of(), List.of());
  }

  /** A part that calls for the vet. */
  public static RecordPart alarm(String heading, List<String> lines) {
    return new RecordPart(heading, true, lines, List.of(), List.of(), List.of());
  }

  public static RecordPart table(String heading, List<List<String>> rows) {
    return new RecordPart(
        heading, false, List.of(), rows.size() > 1 ? rows : List.of(), List.of(), List.of());
  }

  /** Numbers over the visits. */
  public static RecordPart charts(String heading, List<RecordChart> charts) {
    return new RecordPart(heading, false, List.of(), List.of(), charts, List.of());
  }

  /** Drawings of one foot, with a word on them. */
  public static RecordPart drawn(String heading, List<String> lines, List<Drawing> drawings) {
    return new RecordPart(heading, false, lines, List.of(), List.of(), drawings);
  }

  boolean empty() {
    return lines.isEmpty() && table.isEmpty() && charts.isEmpty() && drawings.isEmpty();
  }
}
