package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.rules.WrongRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Local practice and own rules, as the README tells of them. */
class OwnRulesIT {
  private static final Path README = Path.of("README.md");
  private static final String FOOT = Program.exercise("showjumper-torn-side");

  @TempDir private Path folder;
  @TempDir private Path cache;

  private Program program() {
    String path = Program.HOME.resolve("bin") + ":" + System.getenv("PATH");
    return Program.here()
        .from(folder)
        .environment("XDG_CACHE_HOME", cache.toString())
        .environment("PATH", path);
  }

  /** The first block of a kind under a heading of the README. */
  private static String block(String heading, String kind) throws IOException {
    String readme = Files.readString(README);
    String part = readme.substring(readme.indexOf("## " + heading + "\n"));
    Matcher block = Pattern.compile("(?s)```" + kind + "\n(.*?)```").matcher(part);
    assertThat(block.find()).as(kind + " under " + heading).isTrue();
    return block.group(1);
  }

  private String practice(String text) throws IOException {
    Path file = folder.resolve("yard.yaml");
    Files.writeString(file, text);
    return file.toString();
  }

  @Test
  void from_an_empty_folder_to_a_rule_that_works_in_the_commands_the_readme_gives()
      throws IOException {
    List<String> commands = block("Your own rules", "sh").lines().toList();
    assertThat(commands).hasSizeBetween(3, 9).anyMatch(line -> line.contains("rules check"));
    StringBuilder said = new StringBuilder();
    for (String command : commands) {
      said.append(program().command(List.of("sh", "-c", command)).done().out());
    }
    assertThat(said.toString().replaceAll("\\s+", " "))
        .contains("1 rule, 2 cases: all as expected")
        .contains("3000 made-up feet", "No fault found.")
        .contains("Feet left too long")
        .contains("Last done 60 days ago; we let no foot go longer than 56 days (practice).")
        .contains("added: Y001");
    assertThat(cache.resolve("hornbook/rules")).isDirectoryContaining("glob:**.rules");
  }

  @Test
  void own_rules_are_not_run_for_the_asking() throws IOException {
    program().with("rules", "new", "our-yard", "--dir", "own").done();
    Program.Run refused = program().with("assess", FOOT, "--rules", "own").refused(2);
    assertThat(refused.err()).contains("--trust-rules").contains("wrong ones can hurt a horse");
    program().with("assess", FOOT, "--trust-rules").refused(2);
    program().with("assess", FOOT, "--rules", "none", "--trust-rules").refused(66);
  }

  @Test
  void what_is_wrong_with_own_rules_is_told_with_file_line_and_rule() throws IOException {
    program().with("rules", "new", "our-yard", "--dir", "own").done();
    Path rule = folder.resolve("own/our-yard/y001.drl");
    Files.writeString(rule, Files.readString(rule).replace("shodDaysAgo", "shodDaysAgoo"));
    Program.Run told = program().with("rules", "try", "--rules", "own", "--trust-rules");
    assertThat(told.refused(65).err())
        .contains("our-yard/y001.drl:3: Y001: there is no reading shodDaysAgoo")
        .contains("did you mean shodDaysAgo?");
    Files.writeString(rule, Files.readString(rule).replace("shodDaysAgoo", "gluedCycles"));
    assertThat(program().with("rules", "try", "--rules", "own", "--trust-rules").ended(65).err())
        .contains("Y001");
  }

  @Test
  void a_second_rule_is_added_and_a_shipped_topic_refused() {
    program().with("rules", "new", "our-yard", "--dir", "own").done();
    program().with("rules", "new", "our-yard", "--dir", "own").done();
    program().with("rules", "new", "college", "--dir", "own", "--on", "toeLength").done();
    String told = program().with("rules", "try", "--rules", "own", "--trust-rules").done().out();
    assertThat(told).contains("C001", "Y001", "Y002", "3 rules, 6 cases");
    program().with("rules", "new", "nailing", "--dir", "own").refused(2);
    program().with("rules", "new", "Our Yard", "--dir", "own").refused(2);
    program().with("rules", "new", "college", "--dir", "own", "--on", "toe").refused(2);
  }

  /** A small one that writes down its versions; the newest is open. */
  private Path wholeRuleBase() throws IOException {
    Path repository = Files.createDirectory(folder.resolve("repository"));
    WrongRules.layOutGood(repository);
    Path angle = repository.resolve("rules/shape/angle.drl");
    String written = Files.readString(angle);
    assertThat(written).contains("@since(1.1.0)");
    Files.writeString(angle, written.replace("@since(1.1.0)", "@since(1.2.0)"));
    Files.writeString(
        repository.resolve("rules/changes.yaml"),
        """
        - version: 1.2.0
          date: 2026-03-14
          says: [A steep toe is looked at.]
          rules: [S005]
          limits: []
        - version: 1.0.0
          date: 2026-01-14
          says: [All of it is new.]
          rules: []
          all: 11
          limits: []
        """);
    return repository;
  }

  @Test
  void a_rule_is_begun_in_a_whole_rule_base_and_found_sound() throws IOException {
    Path repository = wholeRuleBase();
    String rules = repository.resolve("rules").toString();
    String told =
        program().with("rules", "new", "fixing", "--dir", rules, "--group", "ways").done().out();
    assertThat(told).contains("ways.drl", "changes.yaml").doesNotContain("rulebook.yaml");
    String id = told.replaceAll("(?s).*cases/rules/(F\\d{3})\\.yaml.*", "$1");
    assertThat(repository.resolve("cases/rules/" + id + ".yaml")).exists();
    assertThat(program().with("rules", "check", rules, "--trust-rules").done().out())
        .contains("No fault found.");
    String shown =
        program().with("rules", "show", id, "--rules", rules, "--trust-rules").done().out();
    assertThat(shown).contains("cases/rules/" + id + ".yaml");
    Path changes = repository.resolve("rules/changes.yaml");
    Files.writeString(changes, Files.readString(changes).replaceAll("(, )?" + id + "\\]", "]"));
    assertThat(program().with("rules", "check", rules).ended(1).out())
        .contains(id + ": since is ", "changes.yaml");
  }

  @Test
  void the_practice_of_the_readme_stands_on_the_page() throws IOException {
    String yard = practice(block("Your yard, your college, your country", "yaml"));
    String page = program().with("assess", FOOT, "--practice", yard).done().out();
    assertThat(page)
        .contains("LOCAL PRACTICE: Upper Yard")
        .contains("3 in place of 2")
        .contains("licensed farriers here");
    assertThat(page.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    JsonNode json =
        program().with("assess", FOOT, "--practice", yard, "--format", "json").done().json();
    assertThat(json.at("/rulebook/practice/name").asText()).isEqualTo("Upper Yard");
    String diff =
        program().with("rules", "diff", "shipped", "shipped", "--practice", yard).done().out();
    assertThat(diff).contains("value 2 -> 3").contains("with other advice");
    String limit =
        program().with("rules", "show", "nails.branch.least", "--practice", yard).done().out();
    assertThat(limit).contains("at least 3", "Local practice", "in place of 2");
  }

  @Test
  void less_safety_needs_leave_and_a_call_for_the_vet_is_never_put_off() throws IOException {
    String head = "format: hornbook-practice/1\nname: y\nby: y\ndate: 2026-03-14\nlimits:\n";
    String fewer = practice(head + "  - {id: nails.branch.least, value: 1, reason: habit}\n");
    Program.Run refused = program().with("assess", FOOT, "--practice", fewer).refused(65);
    assertThat(refused.err()).contains("yard.yaml:6:", "less safety", "--accept-less-safe");
    String page =
        program().with("assess", FOOT, "--practice", fewer, "--accept-less-safe").done().out();
    assertThat(page).contains("LESS SAFE");
    String later = practice(head + "  - {id: referral.fever, value: 41 C, reason: habit}\n");
    Program.Run never =
        program().with("assess", FOOT, "--practice", later, "--accept-less-safe").refused(65);
    assertThat(never.err().replaceAll("\\s+", " ")).contains("sooner, never later");
    program().with("assess", FOOT, "--accept-less-safe").refused(2);
    program().with("assess", FOOT, "--practice", "none.yaml").refused(66);
  }

  @Test
  void versions_and_questionnaires() throws IOException {
    assertThat(program().with("rules", "changes").done().out()).contains("Version 1.0.0");
    Path sheet = folder.resolve("limits.csv");
    program().with("rules", "review", "--output", sheet.toString()).done();
    String filled =
        Files.readString(sheet)
            .replaceFirst("(?m)^(nails\\.branch\\.least,.*),,,,,\r?$", "$1,no,3,,Anna,12");
    Files.writeString(sheet, filled);
    String told = program().with("rules", "review", "--read", sheet.toString()).done().out();
    assertThat(told).contains("1 person on 1 limit", "nails.branch.least", "median 3");
    Files.writeString(sheet, filled.replace(",no,3,", ",perhaps,3,"));
    Program.Run wrong = program().with("rules", "review", "--read", sheet.toString()).refused(65);
    assertThat(wrong.err()).contains("perhaps").contains("yes or no");
    program().with("rules", "review", sheet.toString()).refused(2);
    String page = program().with("rules", "review", "--format", "html").done().out();
    assertThat(page).startsWith("<!DOCTYPE html>").contains("(nails.branch.least)");
  }
}
