package hornbook.report.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import hornbook.assessment.quantity.Units;
import hornbook.record.Digest;
import hornbook.record.Entry;
import hornbook.record.EntryLine;
import hornbook.record.History;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

class PapersTest {
  /** The last part of a foot, and what a call for the vet would be. */
  private static final String ENTRY =
      """
      {'format': 'hornbook-entry/1', 'number': 3, 'horse': 'Tansy; a, b', 'by': 'Anna Smith',
       'written': '2026-04-18T10:00:00Z', 'chose': {'left-fore': 'cast-wrap'}, 'done': 'two rolls',
       'assessment': {'format': 'hornbook-assessment/1', 'horse': {'ageYears': 7},
         'visit': {'date': '2026-04-18'},
         'feet': [{'limb': 'left-fore', 'lameness': 2, 'measures': {'toeLength': '4 in'},
           'signs': {'digitalPulse': 'raised'},
           'wall': [{'side': 'lateral', 'from': '20 mm', 'to': '70 mm',
             'state': 'broken-away', 'height': '26 mm'}]}]},
       'advice': {'feet': [{'limb': 'left-fore', 'referrals': [%s],
         'findings': [{'label': 'wall lost', 'defect': true, 'says': 'Wall is missing.'}],
         'techniques': [{'technique': 'cast-wrap', 'verdict': 'first-choice'}]}]},
       'ahead': {'left-fore': {'nextVisit': '2026-05-30', 'wrapOff': '2026-05-09',
         'lookAgain': '2026-04-28', 'owner': [%s]}},
       'rulebook': {'version': '1.0.0', 'digest': 'sha256:0'}}
      """;

  private static final String CALL =
      "{'urgency': 'today', 'rule': 'R055', 'says': 'The crack bleeds.', 'meanwhile': 'No work.'}";

  private static Entry entry(String calls) {
    List<String> owner = new ArrayList<>();
    for (String id :
        List.of("lame", "heat", "wrap-daily", "wet", "wrap-off", "pick-out", "nothing-on")) {
      owner.add("{'id': 'owner." + id + "', 'says': 'About " + id + ".'}");
    }
    for (String id : List.of("work", "tetanus", "next")) {
      owner.add("{'id': 'owner." + id + "', 'says': 'About " + id + ".'}");
    }
    String text = ENTRY.formatted(calls, String.join(",", owner)).replace('\'', '"');
    try {
      String digest = Digest.of(text.getBytes(StandardCharsets.UTF_8));
      return new Entry(digest, new ObjectMapper().readTree(text));
    } catch (JsonProcessingException malformed) {
      throw new AssertionError(malformed);
    }
  }

  private static List<String> lines(RecordPage page) {
    return page.parts().stream().flatMap(part -> part.lines().stream()).toList();
  }

  /** Read back by another library: what a calendar program would see. */
  @Test
  void the_calendar_is_what_another_library_reads() throws IOException, ParserException {
    Calendar calendar =
        new CalendarBuilder().build(new StringReader(CalendarPaper.render(entry(""))));
    List<VEvent> events = calendar.getComponents("VEVENT");
    assertThat(events)
        .extracting(event -> (Object) event.getDateTimeStart().getDate())
        .containsExactly(
            LocalDate.of(2026, 5, 30), LocalDate.of(2026, 5, 9), LocalDate.of(2026, 4, 28));
    assertThat(events)
        .extracting(event -> event.getSummary().getValue())
        .allMatch(says -> says.startsWith("Tansy; a, b: "));
    assertThat(events)
        .extracting(event -> event.getUid().orElseThrow().getValue())
        .doesNotHaveDuplicates();
    assertThat(events).allMatch(event -> event.getDateTimeStamp() != null);
    assertThat(calendar.validate().hasErrors()).isFalse();
    String text = CalendarPaper.render(entry(""));
    assertThat(text).as("the same each time").isEqualTo(CalendarPaper.render(entry("")));
    assertThat(text.split("\r\n")).allMatch(line -> line.length() <= 75);
  }

  @Test
  void the_owner_has_ten_lines_and_what_calls_the_vet_stands_first() {
    List<String> calm = lines(OwnerSheet.of(entry(""), true, id -> id));
    assertThat(calm).hasSize(OwnerSheet.LINES).contains("About pick-out.");
    List<String> called = lines(OwnerSheet.of(entry(CALL), true, id -> id));
    assertThat(called)
        .hasSize(OwnerSheet.LINES)
        .startsWith("Have the vet see the horse TODAY. The crack bleeds.", "What to do: No work.")
        .endsWith("About next.")
        .contains("About lame.", "About wrap-off.")
        .doesNotContain("About pick-out.", "About nothing-on.");
  }

  @Test
  void the_letter_tells_what_was_seen_and_what_was_not() {
    String letter = RecordText.render(VetLetter.of(entry(CALL), true, Units.MM, id -> id));
    assertThat(letter.replaceAll("\\s+", " "))
        .containsSubsequence(
            "VET TODAY, left fore: The crack bleeds. [R055]",
            "Wall is missing.",
            "Toe length 101.6 mm",
            "Outer wall, 20 to 70 mm broken-away, 26 mm high",
            "Digital pulse raised",
            "NOT LOOKED AT",
            "palmar angle",
            "Not looked at is not the same as normal.",
            "cast-wrap.",
            "Two rolls",
            "Advised until you come: No work.",
            "It is not a diagnosis.");
    assertThat(letter.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    String unseen = RecordText.render(VetLetter.of(entry(""), false, Units.INCH, id -> id));
    assertThat(unseen).contains("Nothing is recorded as done", "4 in").doesNotContain("Two rolls");
  }

  /** Every form holds the same lines. */
  @Test
  void all_forms_say_the_same() {
    RecordPage page = EntryPage.of(entry(CALL), 0, Units.MM, id -> id);
    String html = RecordHtml.render(page);
    String markdown = RecordMarkdown.render(page).replace("\\", "");
    String json = RecordJson.render(page, RecordJson.PAPER, "entry");
    for (String line : lines(page)) {
      String end = line.substring(1).strip();
      assertThat(html).contains(end.replace("\"", "&quot;"));
      assertThat(markdown).contains(end);
      assertThat(json).contains(end);
    }
    assertThat(html).doesNotContain("<script", "http:", "src=");
  }

  /** What stands in a file may be meant to do harm. */
  @Test
  void nothing_out_of_an_entry_becomes_markup_or_steers_a_terminal() {
    String evil = "<script>x</script>\\u001b[2J|*_";
    String text = entry(CALL).content().toString().replace("two rolls", evil);
    Entry entry;
    try {
      entry = new Entry(Digest.of(new byte[0]), new ObjectMapper().readTree(text));
    } catch (JsonProcessingException malformed) {
      throw new AssertionError(malformed);
    }
    RecordPage page = EntryPage.of(entry, 0, Units.MM, id -> id);
    assertThat(RecordHtml.render(page)).doesNotContain("<script", "\u001b").contains("&lt;script");
    assertThat(RecordText.render(page)).doesNotContain("\u001b").contains("\\u001b[2J");
    assertThat(RecordMarkdown.render(page)).contains("\\<script\\>").doesNotContain("\u001b");
    assertThat(BookText.list(List.of(EntryLine.of(entry)))).doesNotContain("\u001b");
  }

  /** The chart has the numbers to scale: 40 columns are the greatest, here 26 mm. */
  @Test
  void the_chart_is_to_scale() {
    String later =
        entry("")
            .content()
            .toString()
            .replace("26 mm", "13 mm")
            .replace("2026-04-18", "2026-05-30");
    Entry second;
    try {
      second = new Entry(Digest.of(new byte[1]), new ObjectMapper().readTree(later));
    } catch (JsonProcessingException malformed) {
      throw new AssertionError(malformed);
    }
    History history = History.of("Tansy", List.of(entry(""), second), Set.of(), null);
    String text = RecordText.render(HistoryPage.of(history, Units.MM, id -> id));
    assertThat(text)
        .contains("18 Apr 2026      26 |" + "#".repeat(40))
        .contains("30 May 2026      13 |" + "#".repeat(20) + "\n");
    String html = RecordHtml.render(HistoryPage.of(history, Units.MM, id -> id));
    assertThat(html)
        .contains("<title>Tallest defect over the visits</title>", "<desc>18 Apr 2026: 26 mm.");
    assertThat(marks(html))
        .as("tallest defect, then lameness")
        .contains("0, 10, 20, 30", "0, 1, 2");
  }

  /** The marks on the scale of each chart: each number stands for itself. */
  private static List<String> marks(String html) {
    return Pattern.compile("<svg.*?</svg>", Pattern.DOTALL)
        .matcher(html)
        .results()
        .map(
            svg ->
                Pattern.compile("<text[^>]*>(\\d+)</text>")
                    .matcher(svg.group())
                    .results()
                    .map(mark -> mark.group(1))
                    .collect(Collectors.joining(", ")))
        .toList();
  }
}
