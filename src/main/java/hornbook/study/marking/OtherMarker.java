package hornbook.study.marking;

import hornbook.assessment.tree.Fault;
import hornbook.study.exercise.TableWidth;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Marks another marker has given: the table of marks with its numbers changed by hand.
 *
 * @param marks by learner and id of the point
 */
public record OtherMarker(Map<String, Map<String, Double>> marks) {
  /** Reads the table; rows and points that are not in it are not compared. */
  public static OtherMarker read(byte[] bytes, String shown, List<Fault> faults) {
    Map<String, Map<String, Double>> marks = new LinkedHashMap<>();
    String text = new String(bytes, StandardCharsets.UTF_8).replace("\ufeff", "");
    char between = text.lines().findFirst().orElse("").contains(",") ? ',' : ';';
    if (!TableWidth.fits(text, between, shown, faults)) {
      return new OtherMarker(marks);
    }
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(between).build();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      List<String> columns = List.of();
      for (CSVRecord row : parser) {
        int line = (int) parser.getCurrentLineNumber();
        if (columns.isEmpty()) {
          columns = row.stream().map(String::strip).toList();
          if (!columns.contains("by")) {
            String allowed = "a table as mark --format csv writes it";
            faults.add(new Fault(shown, line, 1, "", "no column by", allowed, "by"));
            break;
          }
        } else {
          add(columns, row.stream().map(String::strip).toList(), shown, line, marks, faults);
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException malformed) {
      faults.add(new Fault(shown, 1, 1, "", "no such rows", "a table, quotes closed", null));
    }
    return new OtherMarker(marks);
  }

  private static void add(
      List<String> columns,
      List<String> cells,
      String shown,
      int line,
      Map<String, Map<String, Double>> marks,
      List<Fault> faults) {
    Map<String, Double> own = new LinkedHashMap<>();
    for (int at = 0; at < Math.min(columns.size(), cells.size()); at++) {
      String cell = cells.get(at).replace(',', '.');
      if (columns.get(at).contains("/") && !cell.isEmpty()) {
        if (cell.matches("\\d{1,3}(\\.\\d{1,3})?")) {
          own.put(columns.get(at), Double.parseDouble(cell));
        } else {
          faults.add(
              new Fault(shown, line, at + 1, columns.get(at), Fault.quote(cell), "marks", null));
        }
      }
    }
    int by = columns.indexOf("by");
    if (by < cells.size() && !cells.get(by).isEmpty()) {
      marks.put(cells.get(by), own);
    }
  }

  /** How far this marker agrees with the marks given here. */
  public Kappa with(ClassMarks given) {
    Map<String, Map<String, Double>> own = new LinkedHashMap<>();
    for (ClassMarks.Row row : given.rows()) {
      if (row.marks() != null) {
        Map<String, Double> points = new LinkedHashMap<>();
        row.marks().points().forEach(point -> points.put(point.id(), point.marks()));
        own.put(row.by(), points);
      }
    }
    return with(new OtherMarker(own), given);
  }

  /** How far two markers agree: whether a point won all its marks, some, or none. */
  public Kappa with(OtherMarker other, ClassMarks scheme) {
    Map<String, Double> of = new LinkedHashMap<>();
    scheme.marked().stream()
        .limit(1)
        .forEach(one -> one.points().forEach(point -> of.put(point.id(), point.of())));
    List<String> ones = new ArrayList<>();
    List<String> others = new ArrayList<>();
    marks.forEach(
        (by, points) ->
            points.forEach(
                (id, mark) -> {
                  Double second = other.marks.getOrDefault(by, Map.of()).get(id);
                  if (second != null && of.containsKey(id)) {
                    ones.add(kind(mark, of.get(id)));
                    others.add(kind(second, of.get(id)));
                  }
                }));
    return Kappa.of(ones, others);
  }

  private static String kind(double mark, double of) {
    return mark >= of ? "all" : mark > 0 ? "some" : "none";
  }
}
