package hornbook.report.classroom;

import hornbook.study.marking.ClassMarks;
import hornbook.study.marking.PointMarks;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Marks for a spreadsheet: a row a learner, a column a point. */
public final class MarksCsv {
  private static final String FORMULAS = "=+-@\t\r";

  private MarksCsv() {}

  public static String of(ClassMarks marks) {
    StringWriter text = new StringWriter();
    List<PointMarks> points = marks.marked().isEmpty() ? List.of() : marks.marked().get(0).points();
    try (CSVPrinter rows = new CSVPrinter(text, CSVFormat.RFC4180)) {
      List<String> head = new ArrayList<>(List.of("by", "marks", "of", "capped", "dangerous"));
      points.forEach(point -> head.add(point.id()));
      head.add("error");
      rows.printRecord(head);
      for (ClassMarks.Row row : marks.rows()) {
        rows.printRecord(row(row, marks.of(), points.size()));
      }
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return text.toString();
  }

  private static List<String> row(ClassMarks.Row row, double of, int points) {
    List<String> cells = new ArrayList<>(List.of(plain(row.by())));
    boolean read = row.marks() != null;
    cells.add(read ? MarksPage.number(row.marks().marks()) : "");
    cells.add(MarksPage.number(of));
    cells.add(read ? row.marks().capped() ? "yes" : "no" : "");
    cells.add(read ? Long.toString(row.marks().dangerous()) : "");
    for (int at = 0; at < points; at++) {
      cells.add(read ? MarksPage.number(row.marks().points().get(at).marks()) : "");
    }
    cells.add(plain(String.join("; ", row.error())));
    return cells;
  }

  /** Text that no spreadsheet takes for a formula. */
  private static String plain(String text) {
    boolean formula = !text.isEmpty() && FORMULAS.indexOf(text.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
