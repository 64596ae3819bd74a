package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Teaching cases chosen, shown, handed out, drawn and worked through with the packaged program. */
class ExerciseIT {
  private static final String JUMPER = "showjumper-torn-side";

  /** A whole lesson: looks, a wrong word, a hint, and answers to everything. */
  private static final List<String> LINES =
      List.of(
          "toe angle",
          "wal",
          "wall",
          "signs",
          "done",
          "none",
          "none",
          "not-nailable",
          "hint",
          "hint",
          "hint",
          "glueon",
          "glue-on",
          "N003 G005",
          "nail-on: N003 N999",
          "nail-onn: N003",
          "nail-on: N003, heel-wedge",
          "none",
          "",
          "none",
          "hint",
          "hint",
          "hint",
          "a while",
          "6 weeks",
          "The owner has no van.");

  @TempDir Path folder;

  private Program.Run run(String... arguments) {
    return Program.here().from(folder).with(arguments);
  }

  /** With no other cases than this one to look through for one to teach next. */
  private JsonNode marks(String answer) throws IOException {
    String library = Program.library(Files.createDirectory(folder.resolve("cases")), JUMPER);
    return run("mark", JUMPER, answer, "--library", library, "--format", "json").done().json();
  }

  private List<String> files(String name) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(name))) {
      return files.map(one -> one.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void cases_are_listed_by_level_topic_and_technique_with_what_is_covered() {
    String all = run("exercise", "list").done().out();
    assertThat(all).contains(JUMPER, "WHAT THE CASES COVER", "first choice: ", "levels: ");
    String glued = run("exercise", "list", "--technique", "glue-on").done().out();
    assertThat(glued).contains(JUMPER).doesNotContain("foal-trim:");
    assertThat(run("exercise", "list", "--level", "1", "--topic", "referral").done().out())
        .contains("nail-in-the-frog:")
        .doesNotContain(JUMPER + ":");
    JsonNode json = run("exercise", "list", "--format", "json").done().json();
    assertThat(json.get("cases").findValuesAsText("name")).contains(JUMPER, "foal-trim");
    assertThat(run("exercise", "list", "--topic", "nailin").refused(2).err()).contains("nailing");
    assertThat(run("exercise").refused(2).err()).contains("list", "sheet", "make");
  }

  @Test
  void a_case_is_shown_without_its_answer() {
    String shown = run("exercise", "show", JUMPER).done().out().replaceAll("\\s+", " ");
    assertThat(shown).contains("Tansy pulled her left fore shoe", "toe angle: 51", "broken away");
    assertThat(shown).doesNotContain("too little wall", "glued", "N003", "Two nails a side");
    assertThat(run("exercise", "show", JUMPER, "--format", "html").done().out()).contains("<h1>");
    assertThat(run("exercise", "show", "showjumper-torn-sid").refused(66).err())
        .contains("nearest: " + JUMPER);
  }

  @Test
  void a_blank_answer_can_be_read_as_it_stands_and_is_worth_nothing() throws Exception {
    run("exercise", "sheet", JUMPER, "-o", "mine.yaml").done();
    JsonNode marks = marks("mine.yaml");
    assertThat(marks.at("/learners/0/marks").asDouble()).isZero();
    assertThat(marks.at("/learners/0/error").isNull()).isTrue();
    assertThat(run("exercise", "sheet", JUMPER, "foal-trim").refused(2).err()).contains("--class");
  }

  @Test
  void a_printed_sheet_has_room_to_write_and_its_key_on_a_page_of_its_own() {
    String sheet = run("exercise", "sheet", JUMPER, "--format", "html").done().out();
    String[] pages = sheet.split("<article>");
    assertThat(pages).hasSize(3);
    assertThat(pages[1]).contains("Name or number", "class=\"line\"").doesNotContain("glued");
    assertThat(pages[2]).contains("Key:", "a glued shoe", "Teaching points", "N003");
    assertThat(sheet).contains("break-before: page");
    assertThat(run("exercise", "sheet", JUMPER, "--format", "html", "--without-key").done().out())
        .doesNotContain("Key:");
    assertThat(run("exercise", "sheet", JUMPER, "--format", "markdown").done().out())
        .contains("# Tansy: left fore", "---", "# Key:");
  }

  @Test
  void a_class_gets_a_folder_with_a_sheet_each_and_the_keys_beside_it() throws Exception {
    Files.writeString(folder.resolve("names.txt"), "Ann Brook\n2\n\n# late\n3\n");
    run("exercise", "sheet", JUMPER, "foal-trim", "--class", "names.txt", "-o", "monday").ended(0);
    assertThat(files("monday"))
        .containsExactly(
            "foal-trim",
            "foal-trim-key.html",
            "foal-trim.html",
            JUMPER,
            JUMPER + "-key.html",
            JUMPER + ".html");
    assertThat(files("monday/" + JUMPER)).containsExactly("2.yaml", "3.yaml", "ann-brook.yaml");
    assertThat(folder.resolve("monday/" + JUMPER + "/ann-brook.yaml"))
        .content()
        .contains("by: \"Ann Brook\"", "case: " + JUMPER);
    assertThat(run("exercise", "sheet", JUMPER, "--class", "names.txt", "-o", "monday").ended(74))
        .extracting(Program.Run::err)
        .asString()
        .contains("there is such a file already");
    String table =
        run("exercise", "sheet", JUMPER, "--format", "csv", "--class", "names.txt").done().out();
    assertThat(table.lines()).hasSize(4).first().asString().startsWith("by,findings,vet,vetFor");
    Files.writeString(folder.resolve("twice.txt"), "Ann\nAnn\n");
    assertThat(
            run("exercise", "sheet", JUMPER, "--class", "twice.txt", "-o", "x").refused(65).err())
        .contains("twice.txt:2", "a second Ann");
  }

  @Test
  void a_drawn_case_is_valid_agrees_with_the_rule_base_and_comes_again_by_its_seed() {
    Map<String, String> cases = new LinkedHashMap<>();
    for (String[] about :
        List.of(
            new String[] {"--rule", "N003"},
            new String[] {"--rule", "R001"},
            new String[] {"--near", JUMPER})) {
      for (String seed : List.of("1", "2", "3")) {
        Program.Run made = run("exercise", "make", about[0], about[1], "--seed", seed).done();
        Program.Run again = run("exercise", "make", about[0], about[1], "--seed", seed).done();
        assertThat(again.out()).isEqualTo(made.out());
        String file = Written.file(folder, about[1] + seed + ".yaml", made.out());
        run("exercise", "show", file).done();
        cases.put(file, made.out());
      }
    }
    List<String> assess = new ArrayList<>(List.of("assess", "--format", "json"));
    assess.addAll(cases.keySet());
    List<String> advice = run(assess.toArray(String[]::new)).done().out().lines().toList();
    assertThat(advice).hasSameSizeAs(cases.keySet());
    int at = 0;
    for (String made : cases.values()) {
      JsonNode advised = new Program.Run(0, advice.get(at++), "").json();
      String first = advised.at("/feet/0/firstChoice").asText("none");
      assertThat(made).contains("firstChoice: " + (first.equals("null") ? "none" : first));
    }
    assertThat(run("exercise", "make", "--rule", "N003", "--near", JUMPER).refused(2).err())
        .contains("one of the two");
    assertThat(run("exercise", "make", "--rule", "N03").refused(2).err()).contains("nearest: N003");
  }

  @Test
  void a_lesson_by_pipe_is_told_back_hinted_at_in_three_steps_and_ends_with_the_critique()
      throws Exception {
    Program.Run run =
        Program.here()
            .from(folder)
            .input(String.join("\n", LINES) + "\n")
            .with("exercise", "run", JUMPER, "--answer", "kept.yaml")
            .ended(0);
    assertThat(run.err())
        .contains("toe angle: 51", "broken away", "Nearest: glue-on")
        .contains("Not \"N999\"", "Not \"nail-onn\"", "in 42 days", "Not \"a while\"")
        .containsPattern("Nearest:\\s+wall")
        .containsSubsequence("Hint 1, where to look", "Hint 2, what it is compared", "Hint 3");
    assertThat(run.out())
        .contains("Critique: ", "Technique: a glued shoe", "Next visit: 42 days", "Hints taken: 6")
        .contains("NOT LOOKED AT");
    assertThat(folder.resolve("kept.yaml"))
        .content()
        .contains(
            "ruledOut: {nail-on: [N003], heel-wedge: []}",
            "nextVisit: 42 days",
            "departs: \"The owner has no van.\"");
    JsonNode marks = marks("kept.yaml");
    assertThat(marks.at("/learners/0/marks").asDouble()).isGreaterThan(10);
  }

  @Test
  void a_lesson_broken_off_tells_what_was_answered() {
    Program.Run run =
        Program.here().from(folder).input("done\nnow\nstop\n").with("exercise", "run", JUMPER);
    assertThat(run.ended(0).out()).contains("How soon: the vet now", "Not answered");
  }

  @Test
  void a_lesson_at_a_terminal_asks_for_all_that_an_answer_holds() throws Exception {
    try (Typist typist =
        Typist.at(folder, "exercise", "run", JUMPER, "--answer", "mine.yaml", "--no-pager")) {
      typist.asked("What would you look at").answers("wall");
      typist.sees("broken away").sees("> ").answers("");
      typist.asked("How soon does a vet").answers("none");
      typist.asked("What is the vet called for").answers("none");
      typist.asked("What did you find").answers("not-nailable");
      typist.asked("What goes on the foot").answers("glue-on");
      typist.asked("Why?").answers("N003");
      typist.asked("What is ruled out today").answers("nail-on: N003");
      typist.asked("What supports").answers("none");
      typist.asked("What has to be watched").answers("none");
      typist.asked("What was not looked at").answers("none");
      typist.asked("When do you come again").answers("6 weeks");
      typist.asked("choose differently").answers("");
      typist.sees("Critique: ").sees("Next visit: 42 days");
      typist.endsWith(0);
    }
    assertThat(folder.resolve("mine.yaml"))
        .content()
        .contains("ruledOut: {nail-on: [N003]}", "nextVisit: 42 days")
        .doesNotContain("departs");
  }

  @Test
  void sheets_come_on_paper_with_every_word_and_no_blank_page() throws Exception {
    Files.writeString(folder.resolve("names.txt"), "Ann Brook\nBen\n");
    for (String paper : List.of("a4", "letter")) {
      String name = paper + ".pdf";
      String[] pdf = {"--format", "pdf", "--paper", paper, "--class", "names.txt", "-o", name};
      String[] all =
          Stream.concat(Stream.of("exercise", "sheet", JUMPER), Stream.of(pdf))
              .toArray(String[]::new);
      run(all).done();
      try (PDDocument read = Loader.loadPDF(folder.resolve(name).toFile())) {
        PDFTextStripper words = new PDFTextStripper();
        assertThat(words.getText(read).replaceAll("\\s+", " "))
            .contains("Ann Brook", "Ben", "What was seen and measured", "Left fore: measured")
            .contains("8. When do you come again?", "Key: A show jumper", "Teaching points");
        for (int page = 1; page <= read.getNumberOfPages(); page++) {
          words.setStartPage(page);
          words.setEndPage(page);
          assertThat(words.getText(read).length()).as(paper + " " + page).isGreaterThan(200);
        }
      }
    }
    assertThat(run("exercise", "show", JUMPER, "--paper", "a4").refused(2).err())
        .contains("--paper goes with --format pdf");
  }

  @Test
  void a_lesson_at_a_terminal_is_gone_back_on_helped_with_and_broken_off() throws Exception {
    try (Typist typist = Typist.at(folder, "exercise", "run", "nail-in-the-frog", "--no-pager")) {
      typist.asked("What would you look at").answers("puncture");
      typist.sees("puncture or wound: frog").sees("> ").answers("done");
      typist.asked("How soon does a vet").answers("hint");
      typist.sees("Hint 1, where to look").sees("> ").answers("hint");
      typist.sees("Hint 2").sees("> ").answers("hint");
      typist.sees("Hint 3").sees("> ").answers("nox\u007fw");
      typist.asked("What is the vet called for").answers("<");
      typist.asked("How soon does a vet").answers("?");
      typist.sees("none, mention, days, today, now").sees("> ").answers("5");
      typist.asked("What is the vet called for").answers("object in foot");
      typist.asked("What did you find").types(Typist.CTRL_D);
      typist.sees("How soon: the vet now").sees("Vet for: object in foot");
      typist.endsWith(0);
      assertThat(typist.screen()).doesNotContain("Exception", "WARNING", "org.jline");
    }
  }
}
