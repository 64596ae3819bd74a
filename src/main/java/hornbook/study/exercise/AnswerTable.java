package hornbook.study.exercise;

import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.Nearest;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The answers of a class in one table: a row a learner, a column a key of the answer. Where a case
 * has several feet, the foot stands before the key: {@code left-fore.vet}.
 */
public final class AnswerTable {
  private static final int MOST_ROWS = 20_000;
  private static final char BYTE_ORDER_MARK = '\ufeff';

  private final String file;
  private final Vocabulary known;
  private final List<Foot> all;
  private final List<Foot> feet;

  private AnswerTable(String file, Vocabulary known, List<Foot> all, List<Foot> feet) {
    this.file = file;
    this.known = known;
    this.all = all;
    this.feet = feet;
  }

  /**
   * One row.
   *
   * @param by name or number of the learner, or the line where there is none
   * @param answer of use only where the row has no faults
   */
  public record Row(String by, LearnerAnswer answer, List<Fault> faults) {}

  /** The names of the columns of a blank table. */
  public static List<String> columns(List<Foot> feet) {
    List<String> columns = new ArrayList<>(List.of("by"));
    for (Foot foot : feet) {
      for (String key : FootAnswer.KEYS.subList(1, FootAnswer.KEYS.size())) {
        columns.add(feet.size() == 1 ? key : foot.limb().word() + "." + key);
      }
    }
    return columns;
  }

  /**
   * The rows of a table; none, with faults, where it is no such table.
   *
   * @param all the feet of the assessment
   * @param feet those of them that are to be answered
   * @param faults takes what is wrong with the table as a whole
   */
  public static List<Row> read(
      byte[] bytes,
      String shown,
      Vocabulary known,
      List<Foot> all,
      List<Foot> feet,
      List<Fault> faults) {
    return new AnswerTable(shown, known, all, feet).rows(bytes, faults);
  }

  private List<Row> rows(byte[] bytes, List<Fault> faults) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
      text = text.substring(1);
    }
    List<Row> rows = new ArrayList<>();
    char between = between(text);
    if (!TableWidth.fits(text, between, file, faults)) {
      return List.of();
    }
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(between).build();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      List<String> columns = null;
      for (CSVRecord row : parser) {
        int line = (int) parser.getCurrentLineNumber();
        List<String> cells = row.stream().map(String::strip).toList();
        if (columns == null) {
          columns = cells;
          check(columns, line, faults);
        } else if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
          rows.add(row(columns, cells, line));
        }
        if (!faults.isEmpty()) {
          return List.of();
        }
        if (row.getRecordNumber() > MOST_ROWS) {
          faults.add(new Fault(file, line, 1, "", "more rows than that", "up to 20000", null));
        }
      }
      if (columns == null) {
        faults.add(new Fault(file, 1, 1, "", "an empty file", "a row a learner", null));
      }
    } catch (IOException | UncheckedIOException | IllegalStateException malformed) {
      String allowed = "rows of values with commas between them, quotes closed";
      faults.add(new Fault(file, 1, 1, "", "no such rows", allowed, null));
    }
    return faults.isEmpty() ? List.copyOf(rows) : List.of();
  }

  /** Spreadsheets part columns by commas, semicolons or tabs, as the country has it. */
  private static char between(String text) {
    String head = text.lines().findFirst().orElse("");
    return head.contains(",") ? ',' : head.contains("\t") ? '\t' : ';';
  }

  private void check(List<String> columns, int line, List<Fault> faults) {
    List<String> allowed = new ArrayList<>(columns(feet));
    allowed.add("case");
    feet.forEach(
        foot -> FootAnswer.KEYS.forEach(key -> allowed.add(foot.limb().word() + "." + key)));
    for (int at = 0; at < columns.size(); at++) {
      String name = columns.get(at);
      if (!name.isEmpty() && !allowed.contains(name)) {
        String found = "the unknown column " + Fault.quote(name);
        String all = String.join(", ", columns(feet));
        faults.add(new Fault(file, line, at + 1, "", found, all, Nearest.of(name, allowed)));
      } else if (!name.isEmpty() && columns.indexOf(name) < at) {
        String found = "a second column " + Fault.quote(name);
        faults.add(new Fault(file, line, at + 1, "", found, "each column once", null));
      }
    }
    if (!columns.contains("by")) {
      faults.add(new Fault(file, line, 1, "", "no column by", "by, with name or number", "by"));
    }
  }

  private Row row(List<String> columns, List<String> cells, int line) {
    List<Fault> faults = new ArrayList<>();
    AnswerRow row = new AnswerRow(file, line, columns, cells);
    LearnerAnswer answer = new AnswerReader(known, all, faults).answer(row.tree(limbs()));
    String by = row.cell("by");
    return new Row(by.isEmpty() ? "line " + line : by, answer, List.copyOf(faults));
  }

  private List<String> limbs() {
    return feet.stream().map(Foot::limb).map(Limb::word).toList();
  }
}
