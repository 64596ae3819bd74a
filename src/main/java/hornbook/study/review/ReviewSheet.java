package hornbook.study.review;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.word.Word;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * The questionnaire as comma-separated values (RFC 4180). A cell that a spreadsheet could take for
 * a formula begins with an apostrophe, which is taken off again when it is read.
 */
public final class ReviewSheet {
  /** The columns, in their order; the last five are for whoever fills it in. */
  public static final List<String> COLUMNS =
      List.of(
          "id",
          "limbs",
          "age",
          "limit",
          "value",
          "unit",
          "side",
          "basis",
          "source",
          "used by",
          "agree (yes or no)",
          "your value",
          "comment",
          "your name",
          "years in the trade");

  private static final int MOST_ROWS = 20_000;
  private static final char BYTE_ORDER_MARK = '\ufeff';

  private ReviewSheet() {}

  /** A blank questionnaire. */
  public static String blank(Rulebook book) {
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord(COLUMNS);
      for (ReviewRow row : Review.of(book)) {
        Limit limit = row.limit();
        csv.printRecord(
            safe(limit.id()),
            word(limit.limbs()),
            word(limit.age()),
            safe(limit.label()),
            number(limit.value()),
            safe(limit.unit()),
            word(limit.direction()),
            limit.basis().word(),
            safe(book.sources().get(limit.source()).brief() + ", " + book.locator(limit)),
            safe(String.join("; ", row.rules())),
            "",
            "",
            "",
            "",
            "");
      }
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return text.toString();
  }

  /** Text that no spreadsheet takes for a formula. */
  public static String safe(String text) {
    boolean formula = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }

  /** On one line, without what could upset a screen, and without the apostrophe. */
  private static String plain(String cell) {
    String text = cell.replaceAll("[\\p{Cc}\\p{Cf}\\s]+", " ").strip();
    return text.startsWith("'") ? text.substring(1).strip() : text;
  }

  static String number(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  static String word(Enum<?> constant) {
    return constant == null ? "" : Word.kebab(constant.name());
  }

  /**
   * The answers in a filled questionnaire; rows that were left blank are none. A name stands for
   * the rows below it as well, until another is written.
   *
   * @param faults takes everything found wrong
   */
  public static List<ReviewAnswer> read(
      byte[] bytes, String name, Rulebook book, List<Fault> faults) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
      text = text.substring(1);
    }
    String first = text.lines().findFirst().orElse("");
    char comma = first.contains(";") && !first.contains(",") ? ';' : ',';
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(comma).build();
    List<ReviewAnswer> answers = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      ReviewColumns columns = null;
      ReviewReader reader = new ReviewReader(name, byKey(book), faults);
      for (CSVRecord row : parser) {
        int line = (int) parser.getCurrentLineNumber();
        if (row.getRecordNumber() > MOST_ROWS) {
          faults.add(new Fault(name, line, 1, "", "more rows than that", "up to 20000", null));
          break;
        }
        List<String> cells = row.stream().map(ReviewSheet::plain).toList();
        if (columns == null) {
          columns = ReviewColumns.of(cells, name, faults);
          if (columns == null) {
            break;
          }
        } else if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
          ReviewAnswer answer = reader.answer(columns, cells, line);
          if (answer != null) {
            answers.add(answer);
          }
        }
      }
      if (columns == null && faults.isEmpty()) {
        faults.add(new Fault(name, 1, 1, "", "an empty file", "a filled questionnaire", null));
      }
    } catch (IOException | UncheckedIOException | IllegalStateException malformed) {
      String allowed = "rows of values with commas between them, quotes closed";
      faults.add(new Fault(name, 1, 1, "", "no such rows", allowed, null));
    }
    return answers;
  }

  private static Map<String, Limit> byKey(Rulebook book) {
    Map<String, Limit> byKey = new LinkedHashMap<>();
    book.limits().forEach(limit -> byKey.put(key(limit), limit));
    return byKey;
  }

  static String key(String id, String limbs, String age) {
    return String.join("|", id, limbs, age);
  }

  /** What tells one limit from all others: its id, with limbs and age. */
  static String key(Limit limit) {
    return key(limit.id(), word(limit.limbs()), word(limit.age()));
  }
}
