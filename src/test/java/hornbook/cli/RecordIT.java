package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The daybook, as the shell sees it. */
class RecordIT {
  private static final String TORN = exercise("showjumper-torn-side");
  private static final String PIERCED = exercise("nail-in-the-frog");
  private static final int KILLS = Integer.getInteger("record.kills", 6);

  @TempDir static Path once;
  @TempDir Path folder;
  private Path book;

  @BeforeEach
  void setUp() {
    book = folder.resolve("book");
  }

  private Program.Run record(String... arguments) {
    List<String> all = new ArrayList<>(List.of("record"));
    all.addAll(List.of(arguments));
    return Program.here()
        .environment("HORNBOOK_BOOK", book.toString())
        .with(all.toArray(String[]::new));
  }

  /** A book with one visit in it, which the program has written once for all who begin so. */
  private void begun() throws IOException {
    Path begun = once.resolve("begun");
    if (!Files.exists(begun)) {
      Program.here()
          .environment("HORNBOOK_BOOK", begun.toString())
          .with("record", "add", TORN, "--chose", "glue-on")
          .done();
    }
    Program.copy(begun, book, every -> true);
  }

  private static String words(String page) {
    return page.replaceAll("\\s+", " ");
  }

  private static JsonNode read(Path file) throws IOException {
    return new ObjectMapper().readTree(file.toFile());
  }

  private static String sha256(Path file) throws Exception {
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
    return "sha256:" + HexFormat.of().formatHex(digest);
  }

  @Test
  void a_visit_is_written_listed_shown_and_checked() throws Exception {
    Path photo = Files.write(folder.resolve("Side view.JPG"), new byte[] {1, 2, 3});
    Path sheet = folder.resolve("sheet.json");
    Program.run("plan", TORN, "--technique", "glue-on", "--format", "json", "-o", sheet.toString())
        .done();
    String said =
        record(
                "add",
                TORN,
                "--chose",
                "glue-on",
                "--done",
                "size 5",
                "--by",
                "A. Smith",
                "--photo",
                photo.toString(),
                "--plan",
                sheet.toString())
            .done()
            .out();
    assertThat(said).startsWith("Entry 1 is written: Tansy, 18 April 2026.\n");
    record("add", PIERCED, "--chose", "none").done();

    Path first = book.resolve("000001/entry.json");
    JsonNode entry = read(first);
    assertThat(entry.path("format").asText()).isEqualTo("hornbook-entry/1");
    assertThat(entry.path("number").asInt()).isEqualTo(1);
    assertThat(entry.path("previous").isNull()).isTrue();
    assertThat(entry.path("chose").path("left-fore").asText()).isEqualTo("glue-on");
    assertThat(entry.path("departs").asBoolean()).isFalse();
    assertThat(entry.path("because").isNull()).isTrue();
    assertThat(entry.path("done").asText()).isEqualTo("size 5");
    assertThat(entry.path("plan").path("format").asText()).isEqualTo("hornbook-plan/1");
    JsonNode advice = Program.run("assess", TORN, "--format", "json").done().json();
    assertThat(entry.path("advice")).as("the advice as it was given").isEqualTo(advice);
    assertThat(entry.path("rulebook")).isEqualTo(advice.path("rulebook"));
    JsonNode kept = entry.path("photos").get(0);
    assertThat(sha256(first.resolveSibling(kept.path("file").asText())))
        .isEqualTo(kept.path("digest").asText())
        .isEqualTo(sha256(photo));
    assertThat(read(book.resolve("000002/entry.json")).path("previous").asText())
        .isEqualTo(sha256(first));

    assertThat(record("list").done().out().lines()).hasSize(3);
    assertThat(record("list", "--horse", "TANSY").done().out())
        .contains("glue-on")
        .doesNotContain("Sorrel");
    assertThat(record("list", "--format", "json").done().json().path("entries")).hasSize(2);
    String page = record("show", "1").done().out();
    assertThat(page.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    assertThat(words(page))
        .contains("a glued shoe (first choice in the advice)", "Size 5", "by A. Smith")
        .contains("JOB SHEET: A GLUED SHOE", "(Side view.JPG)");
    String digest = sha256(first);
    assertThat(record("show", digest.substring(7, 15)).done().out()).isEqualTo(page);
    assertThat(record("show", "1", "--format", "json").done().out())
        .isEqualTo(Files.readString(first));
    assertThat(record("verify").done().out())
        .isEqualTo("2 entries, one whole chain: nothing altered, missing or out of order.\n");
  }

  /**
   * Who wrote it down in inches finds it in inches, and it means the same when it is read again.
   */
  @Test
  void the_assessment_is_kept_as_it_was_written() throws Exception {
    record("add", TORN, "--chose", "glue-on", "--set", "feet[0].measures.toeLength=3 3/8 in")
        .done();
    JsonNode kept = read(book.resolve("000001/entry.json")).path("assessment");
    assertThat(kept.at("/feet/0/measures/toeLength").asText()).isEqualTo("3 3/8 in");
    String again = Written.file(folder, "again.json", kept.toString());
    JsonNode before = read(book.resolve("000001/entry.json")).path("advice");
    assertThat(Program.run("assess", again, "--format", "json").done().json()).isEqualTo(before);
  }

  @Test
  void what_departs_from_the_advice_needs_a_reason() throws Exception {
    assertThat(record("add", TORN, "--chose", "nail-on").refused(2).err())
        .contains("departs from the advice", "[N003]", "--because");
    assertThat(book).doesNotExist();
    String said =
        record("add", PIERCED, "--chose", "nail-on", "--because", "owner insists").done().out();
    assertThat(words(said))
        .contains("A call for the vet forbids this: VET NOW [R002]", "owner insists");
    JsonNode entry = read(book.resolve("000001/entry.json"));
    assertThat(entry.path("departs").asBoolean()).isTrue();
    assertThat(entry.at("/departures/0/forbidden").toString()).contains("R002", "Until then");
    assertThat(words(record("show", "1").done().out()))
        .contains("A CALL FOR THE VET FORBIDS THIS", "Reason given: owner insists");
    assertThat(words(record("export", "1", "--for", "vet").done().out()))
        .contains("This departs from the advice. Reason given: owner insists");
  }

  @Test
  void an_entry_is_corrected_by_a_later_one() throws Exception {
    begun();
    String before = sha256(book.resolve("000001/entry.json"));
    record("add", "--corrects", "1", "--outcome", "stayed on for six weeks").done();
    assertThat(sha256(book.resolve("000001/entry.json"))).isEqualTo(before);
    JsonNode second = read(book.resolve("000002/entry.json"));
    assertThat(second.path("corrects").asInt()).isEqualTo(1);
    assertThat(second.path("advice"))
        .isEqualTo(read(book.resolve("000001/entry.json")).path("advice"));
    assertThat(record("show", "1").done().out()).contains("Entry 2 corrects this entry");
    assertThat(record("show", "2").done().out())
        .contains("Stayed on for six weeks", "Corrects entry 1");
    assertThat(record("add", "--corrects", "9", "--done", "x").refused(66).err())
        .contains("there is no entry 9", "from 1 to 2");
    assertThat(record("add", "--corrects", "1").refused(2).err())
        .contains("there is nothing to correct");
    assertThat(record("verify").done().out()).startsWith("2 entries");
  }

  @Test
  void a_foot_is_followed_over_its_visits() throws Exception {
    begun();
    record(
            "add",
            TORN,
            "--chose",
            "glue-on",
            "--set",
            "visit.date=2026-05-30",
            "--set",
            "feet[0].wall[2].height=18 mm",
            "--set",
            "feet[0].lostShoe=false",
            "--set",
            "feet[0].lameness=1")
        .done();
    String page = record("history", "--horse", "tansy", "--foot", "left-fore").done().out();
    assertThat(page.lines()).allMatch(line -> line.length() <= 80);
    assertThat(words(page))
        .contains("42 days between the visits.")
        .contains("the defect was 26 mm high, is 18 mm; forecast 8 to 20 mm.")
        .contains("The wall grows down as forecast.", "A glued shoe stayed on.")
        .contains("Lameness: grade 0 before, grade 1 after: worse.");
    String html = record("history", "--horse", "Tansy", "--format", "html").done().out();
    assertThat(html)
        .contains("<svg", "<title>Tallest defect over the visits</title>")
        .doesNotContain("<script");
    assertThat(record("history", "--horse", "Tansi").refused(66).err()).contains("nearest: Tansy");
  }

  @Test
  void papers_are_made_for_vet_owner_and_calendar() {
    record("add", TORN, "--chose", "glue-on", "--by", "A. Smith").done();
    String letter = record("export", "1", "--for", "vet").done().out();
    assertThat(words(letter)).contains("From: A. Smith", "NOT LOOKED AT", "It is not a diagnosis.");
    String owner = record("export", "1", "--for", "owner").done().out();
    assertThat(owner.lines().filter(line -> line.startsWith("- "))).hasSize(10);
    String calendar = record("export", "1", "--for", "calendar").done().out();
    assertThat(calendar).startsWith("BEGIN:VCALENDAR\r\n").contains("DTSTART;VALUE=DATE:20260530");
    String anonymous = record("export", "1", "--anonymous", "--format", "json").done().out();
    assertThat(anonymous).doesNotContain("Tansy", "Smith", "2026-04-18", "18 April", "30 May");
    assertThat(anonymous).contains("day 42");
    Path pdf = folder.resolve("owner.pdf");
    record("export", "1", "--for", "owner", "--format", "pdf", "-o", pdf.toString()).done();
    assertThat(pdf).content(StandardCharsets.ISO_8859_1).startsWith("%PDF-");
    assertThat(record("export", "1", "--for", "calendar", "--anonymous").refused(2).err())
        .contains("takes them away");
  }

  private static List<String> drawings(String page) {
    return Pattern.compile("<svg.*?</svg>", Pattern.DOTALL)
        .matcher(page)
        .results()
        .map(MatchResult::group)
        .toList();
  }

  /** The drawings of an entry are those of the page of advice on the same assessment. */
  @Test
  void an_entry_on_a_page_shows_its_feet() throws Exception {
    begun();
    String page = record("show", "1", "--format", "html").done().out();
    String advice = Program.run("assess", TORN, "--format", "html").done().out();
    assertThat(drawings(page)).hasSize(4).containsExactlyInAnyOrderElementsOf(drawings(advice));
    assertThat(page).contains("Drawings: left fore");
    assertThat(record("show", "1").done().out()).doesNotContainIgnoringCase("drawings");
    assertThat(record("verify").done().out()).contains("one whole chain");
  }

  /** The numbers are those of the visit: what today's limits add to them is said. */
  @Test
  void an_entry_by_other_rules_is_drawn_and_says_what_is_of_today() {
    String practice =
        Written.file(
            folder,
            "practice.yaml",
            """
            format: hornbook-practice/1
            name: The yard
            by: A. S.
            date: 2026-03-14
            limits:
              - {id: error.length, value: 4 mm, reason: we measure with a tape}
            """);
    record("add", TORN, "--chose", "glue-on", "--practice", practice).done();
    String page = record("show", "1", "--format", "html").done().out();
    assertThat(drawings(page)).hasSize(4);
    assertThat(words(page))
        .contains("and the limits of The yard", "computed by the limits of today");
  }

  /** With the sheet that was kept, the foot is drawn after the job as well, as on the sheet. */
  @Test
  void an_entry_with_its_job_sheet_shows_the_foot_after_the_job() throws Exception {
    Path sheet = folder.resolve("sheet.json");
    String[] plan = {"plan", TORN, "--technique", "glue-on", "--add", "9mm", "--format"};
    Program.run(with(plan, "json", "-o", sheet.toString())).done();
    record("add", TORN, "--chose", "glue-on", "--plan", sheet.toString()).done();
    String page = record("show", "1", "--format", "html").done().out();
    String made = Program.run(with(plan, "html")).done().out();
    assertThat(drawings(page)).hasSize(5).containsExactlyInAnyOrderElementsOf(drawings(made));
    Files.writeString(sheet, Files.readString(sheet).replace("\"add\" : 9.0", "\"add\" : 3.0"));
    record("add", TORN, "--chose", "glue-on", "--plan", sheet.toString()).done();
    String other = record("show", "2", "--format", "html").done().out();
    assertThat(drawings(other)).hasSize(4);
    assertThat(words(other)).contains("The foot after the job is not drawn");
  }

  private static String[] with(String[] command, String... more) {
    return Stream.of(command, more).flatMap(Stream::of).toArray(String[]::new);
  }

  @Test
  void papers_are_made_straight_from_an_assessment() {
    String letter = Program.run("assess", PIERCED, "--for", "vet").done().out();
    assertThat(words(letter)).contains("VET NOW, left hind", "Nothing is recorded as done");
    String owner = Program.run("assess", TORN, "--for", "owner", "--anonymous").done().out();
    assertThat(owner.lines().filter(line -> line.startsWith("- "))).hasSize(10);
    assertThat(owner).doesNotContain("Tansy", "2026");
    assertThat(Program.run("assess", TORN, PIERCED, "--for", "vet").refused(2).err())
        .contains("one assessment");
  }

  /** What is done to the files is named, and the exit code is 1. */
  @Test
  void what_was_altered_is_named() throws Exception {
    begun();
    record("add", TORN, "--chose", "glue-on").done();
    Path file = book.resolve("000001/entry.json");
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length / 2] ^= 1;
    Files.write(file, bytes);
    assertThat(record("verify").ended(1).out()).contains("Entry 1 was altered");
    JsonNode verified = record("verify", "--format", "json").ended(1).json();
    assertThat(verified.at("/faults/0/entry").asInt()).isEqualTo(1);
    assertThat(verified.at("/faults/0/kind").asText()).isEqualTo("altered");
    Files.delete(book.resolve("000002/entry.json"));
    assertThat(record("verify").ended(1).out()).contains("Entry 2 is missing");
  }

  /** A disk that takes so much and no more: the size of a file is held to 8 KiB. */
  @Test
  void a_disk_that_fills_in_the_middle_of_a_file_leaves_the_book_whole() throws Exception {
    begun();
    String line =
        "ulimit -f 16; exec '"
            + Program.HOME
            + "/bin/hornbook' record add '"
            + TORN
            + "' --chose glue-on";
    Program.Run full =
        Program.here()
            .environment("HORNBOOK_BOOK", book.toString())
            .command(List.of("bash", "-c", line));
    assertThat(full.refused(74).err()).contains("cannot be written", "nothing was written");
    assertThat(record("verify").done().out()).startsWith("1 entry, one whole chain");
    assertThat(record("add", TORN, "--chose", "glue-on").done().out()).startsWith("Entry 2");
  }

  /** The program is killed at any moment, as often as {@code -Drecord.kills} asks. */
  @Test
  void a_program_that_is_killed_loses_nothing_it_told_of() throws Exception {
    Random chance = new Random();
    int told = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Path said = folder.resolve("said" + kill);
      ProcessBuilder builder =
          new ProcessBuilder(
              Program.HOME + "/bin/hornbook",
              "record",
              "add",
              TORN,
              "--chose",
              "glue-on",
              "--done",
              "kill " + kill);
      builder.environment().put("HORNBOOK_BOOK", book.toString());
      builder.environment().put("HORNBOOK_ARCHIVE", "off");
      Process program = builder.redirectOutput(said.toFile()).start();
      program.waitFor(chance.nextInt(1500), TimeUnit.MILLISECONDS);
      program.destroyForcibly().waitFor();
      told += Files.readString(said).contains(" is written") ? 1 : 0;
    }
    if (Files.exists(book)) {
      JsonNode verified = record("verify", "--format", "json").done().json();
      assertThat(verified.path("entries").asInt()).isBetween(told, KILLS);
    }
    record("add", TORN, "--chose", "glue-on").done();
    assertThat(record("verify").done().out()).contains("one whole chain");
  }

  /** Nothing a user or a file says steers the terminal; nothing leads out of the book. */
  @Test
  void no_control_character_reaches_the_screen() throws Exception {
    String done = "x\u001b[2Jy\nz";
    record("add", TORN, "--chose", "glue-on", "--done", done, "--by", "A\u0007").done();
    String seen =
        record("show", "1").done().out()
            + record("list").done().out()
            + record("export", "1").done().out()
            + record("export", "1", "--format", "markdown").done().out();
    assertThat(seen).doesNotContain("\u001b", "\u0007").contains("X\\u001b[2Jy z");
    assertThat(record("show", "../../etc/passwd").refused(66).err()).contains("there is no entry");
    assertThat(record("add", TORN, "--chose", "glue-on", "--photo", "/dev/zero").refused(66).err())
        .contains("no picture /dev/zero");
  }

  @Test
  void a_book_is_found_where_it_was_put() {
    Path other = folder.resolve("other");
    record("add", TORN, "--chose", "glue-on", "--book", other.toString()).done();
    assertThat(book).doesNotExist();
    assertThat(record("list", "--book", other.toString()).done().out()).contains("Tansy");
    assertThat(record("list").refused(66).err()).contains("there is no daybook in " + book);
    Path data = folder.resolve("data");
    Program.here()
        .environment("HORNBOOK_BOOK", null)
        .environment("XDG_DATA_HOME", data.toString())
        .with("record", "add", TORN, "--chose", "glue-on")
        .done();
    assertThat(data.resolve("hornbook/daybook/000001/entry.json")).exists();
  }

  @Test
  void what_does_not_fit_is_told_before_anything_is_written() {
    assertThat(record("add", TORN).refused(2).err()).contains("--chose is missing", "glue-on");
    assertThat(record("add", TORN, "--chose", "glue").refused(2).err())
        .contains("nearest: glue-on");
    assertThat(record("add", TORN, "--chose", "right-hind=glue-on").refused(2).err())
        .contains("no right-hind in this assessment", "left-fore");
    assertThat(record("add").refused(2).err()).contains("FILE is missing");
    assertThat(record("add", TORN, "--chose", "glue-on", "--plan", TORN).refused(65).err())
        .contains("no job sheet in JSON");
    assertThat(
            record("add", TORN, "--chose", "glue-on", "--set", "feet[0].lameness=9")
                .refused(65)
                .err())
        .contains("feet[0].lameness");
    assertThat(book).doesNotExist();
    assertThat(Program.run("record").refused(2).err()).contains("Examples:", "verify");
  }

  @Test
  void text_that_is_no_text_of_ours_is_kept_in_any_script() throws Exception {
    record("add", TORN, "--chose", "glue-on", "--done", "Hufschuh für Żółć 馬").done();
    String text = Files.readString(book.resolve("000001/entry.json"), StandardCharsets.UTF_8);
    assertThat(text).contains("Hufschuh für Żółć 馬");
    assertThat(record("show", "1").done().out()).contains("Hufschuh für Żółć 馬");
  }
}
