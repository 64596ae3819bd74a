package hornbook.study.review;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.tree.Fault;
import hornbook.report.rules.ReviewPage;
import hornbook.report.rules.ReviewText;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The trade is asked about every limit, and what it answers is added up and nothing more. */
class ReviewTest {
  private static final Rulebook BOOK = Shipped.BOOK;
  private static final String HEAD =
      "id,limbs,age,agree (yes or no),your value,comment,your name,years in the trade\r\n";

  private final List<Fault> faults = new ArrayList<>();

  private List<ReviewAnswer> read(String text) {
    return ReviewSheet.read(text.getBytes(StandardCharsets.UTF_8), "anna.csv", BOOK, faults);
  }

  private ReviewTally tally(String... files) {
    List<ReviewAnswer> answers = new ArrayList<>();
    for (String file : files) {
      answers.addAll(read(file));
    }
    assertThat(faults).isEmpty();
    List<ReviewTally> tallies = ReviewTally.of(Review.of(BOOK), answers);
    assertThat(tallies).hasSize(1);
    return tallies.get(0);
  }

  @Test
  void every_limit_is_asked_about_once_the_weakest_ground_first() throws Exception {
    String sheet = ReviewSheet.blank(BOOK);
    assertThat(sheet.replace("\r\n", "")).doesNotContain("\n");
    List<CSVRecord> rows = CSVFormat.RFC4180.parse(new StringReader(sheet)).getRecords();
    assertThat(rows.get(0).toList()).isEqualTo(ReviewSheet.COLUMNS);
    assertThat(rows).hasSize(BOOK.limits().size() + 1);
    assertThat(rows.stream().skip(1).map(row -> row.get(0) + " " + row.get(1) + " " + row.get(2)))
        .doesNotHaveDuplicates();
    List<String> bases = rows.stream().skip(1).map(row -> row.get(7)).distinct().toList();
    assertThat(bases).startsWith("practice", "memory").doesNotHaveDuplicates();
    assertThat(ReviewPage.html(BOOK)).contains(labels());
    assertThat(ReviewPage.markdown(BOOK).replace("\\", "")).contains(labels());
  }

  private static List<String> labels() {
    return BOOK.limits().stream().map(limit -> "(" + limit.id() + ")").distinct().toList();
  }

  @Test
  void a_blank_sheet_is_read_as_no_answers() {
    assertThat(read(ReviewSheet.blank(BOOK))).isEmpty();
    assertThat(faults).isEmpty();
  }

  @Test
  void a_sheet_filled_in_as_it_was_written_is_read() throws Exception {
    String sheet = ReviewSheet.blank(BOOK);
    List<CSVRecord> rows = CSVFormat.RFC4180.parse(new StringReader(sheet)).getRecords();
    StringBuilder filled = new StringBuilder();
    for (CSVRecord row : rows) {
      List<String> cells = new ArrayList<>(row.toList());
      if (row.getRecordNumber() > 1) {
        cells.set(10, "yes");
        cells.set(13, "Anna");
      }
      filled.append(CSVFormat.RFC4180.format(cells.toArray())).append("\r\n");
    }
    List<ReviewAnswer> answers = read(filled.toString());
    assertThat(faults).isEmpty();
    assertThat(answers.stream().map(ReviewAnswer::limit))
        .containsExactlyElementsOf(Review.of(BOOK).stream().map(ReviewRow::limit).toList());
  }

  @Test
  void agreement_median_and_range_are_those_of_the_answers() {
    ReviewTally tally =
        tally(
            HEAD
                + "nails.branch.least,,,yes,,,Anna,12\r\n"
                + "nails.branch.least,,,no,3,\"three, on stones\",Ben,30\r\n",
            HEAD
                + "nails.branch.least,,,no,5,,Carl,\r\nnails.branch.least,,,no,,too few,Dora,1\r\n",
            HEAD + "nails.branch.least,,,,4,,Emil,2\r\n");
    assertThat(tally.people()).isEqualTo(5);
    assertThat(tally.agree()).isEqualTo(1);
    assertThat(tally.disagree()).isEqualTo(4);
    assertThat(tally.proposed()).containsExactly(2.0, 3.0, 4.0, 5.0);
    assertThat(tally.median()).isEqualTo(3.5);
    assertThat(ReviewText.render(BOOK, List.of(tally), 5))
        .contains("5 people on 1 limit. Nothing is changed.")
        .contains("5 people: 1 agree, 4 disagree")
        .contains("median 3.5, from 2 to 5, by 4")
        .contains("- Ben: three, on stones");
  }

  @Test
  void sheets_of_other_countries_and_units_are_read() {
    ReviewTally tally =
        tally(
            "\ufeff"
                + HEAD.replace(',', ';')
                + "nails.spacing;;;no;27,5;;Anna;\r\nnails.spacing;;;no;1 1/4 in;;Ben;\r\n");
    assertThat(tally.proposed()).containsExactly(27.5, 31.75);
  }

  @Test
  void spans_of_time_stand_for_one_another() {
    String row = "aftercare.interval.longest,,,no,%s,,%s,\r\n";
    ReviewTally tally =
        tally(HEAD + row.formatted("6 weeks", "Anna") + row.formatted("48 hours", "Ben"));
    assertThat(tally.proposed()).containsExactly(2.0, 42.0);
  }

  @Test
  void faults_are_told_with_line_and_nearest_word() {
    read(
        HEAD
            + "nails.spacng,,,yes,,,Anna,\r\n"
            + "nails.spacing,,,perhaps,,,,\r\n"
            + "nails.spacing,,,no,wide,,Ben,many\r\n"
            + "nails.spacing,,,yes,30,,Carl,\r\n"
            + "nails.spacing,,,yes,,,Carl,\r\n");
    assertThat(faults.stream().map(fault -> fault.line() + " " + fault.path()))
        .containsExactly(
            "2 id",
            "3 agree (yes or no)",
            "4 years in the trade",
            "4 your value",
            "5 your value",
            "6 id");
    assertThat(faults.get(0).nearest()).isEqualTo("nails.spacing");
    faults.clear();
    assertThat(read("id,value\r\nx,1\r\n")).isEmpty();
    assertThat(faults).hasSizeGreaterThan(3);
    faults.clear();
    read("");
    assertThat(faults).hasSize(1);
    faults.clear();
    read(HEAD + "nails.spacing,,,\"yes");
    assertThat(faults).hasSize(1);
  }

  @Property(tries = 300)
  void nothing_written_into_a_sheet_is_taken_for_a_formula(@ForAll String text) {
    String cell = ReviewSheet.safe(text);
    assertThat(cell).doesNotStartWith("=").doesNotStartWith("+").doesNotStartWith("-");
    assertThat(cell).doesNotStartWith("@").doesNotStartWith("\t").doesNotStartWith("\r");
  }

  @Property(tries = 300)
  void no_bytes_at_all_stop_the_reading(@ForAll byte[] bytes) {
    List<Fault> found = new ArrayList<>();
    assertThat(ReviewSheet.read(bytes, "any.csv", BOOK, found)).isEmpty();
  }

  @Test
  void a_limit_with_a_formula_in_its_words_is_written_safely() {
    Limit limit = BOOK.limits().get(0);
    Limit evil =
        new Limit(
            limit.id(),
            "=HYPERLINK(\"x\")",
            -2,
            limit.unit(),
            limit.direction(),
            true,
            null,
            null,
            "memory",
            "x",
            Basis.MEMORY,
            limit.safer(),
            1,
            List.of(),
            true);
    assertThat(ReviewSheet.blank(BOOK.withLimits(List.of(evil))))
        .contains("\"'=HYPERLINK(\"\"x\"\")\"")
        .contains(",-2,");
  }
}
