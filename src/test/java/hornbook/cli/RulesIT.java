package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.rulebook.load.ShippedRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule base as the packaged program shows it. */
class RulesIT {
  private static final Pattern RULE = Pattern.compile("(?m)^rule \"");

  @Test
  void as_many_rules_are_written_as_loaded_and_listed() throws Exception {
    JsonNode listed = Program.once("rules", "list", "--format", "json").done().json().path("rules");
    long written = 0;
    try (Stream<Path> files = Files.walk(Program.HOME.resolve("rules"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".drl")).toList()) {
        written += RULE.matcher(Files.readString(file)).results().count();
      }
    }
    assertThat(written).isPositive();
    assertThat(listed).hasSize((int) written);
    assertThat(listed).map(rule -> rule.path("id").asText()).doesNotHaveDuplicates();
    assertThat(ShippedRules.book().rules()).hasSize((int) written);
  }

  @Test
  void the_list_has_a_line_for_every_rule_and_a_heading_for_every_topic() {
    JsonNode all = Program.once("rules", "list", "--format", "json").done().json().path("rules");
    String text = Program.once("rules", "list").done().out();
    List<String> ids = new ArrayList<>();
    all.forEach(rule -> ids.add("  " + rule.path("id").asText() + "  "));
    assertThat(text).contains(ids).contains(all.size() + " rules in all");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_topic_is_listed_alone() {
    JsonNode nailing =
        Program.run("rules", "list", "--topic", "nailing", "--format", "json").done().json();
    assertThat(nailing.findValuesAsText("topic")).isNotEmpty().allMatch("nailing"::equals);
    String text = Program.once("rules", "list", "--topic", "nailing").done().out();
    assertThat(text).contains("N003").doesNotContain("R001");
  }

  @Test
  void rules_are_found_by_words_of_the_trade() {
    String found = Program.run("rules", "list", "quarter", "cracks").done().out();
    assertThat(found).contains("Cracks (cracks)", "K034", "K042").doesNotContain("K035");
    String many = Program.run("rules", "list", "heel").done().out();
    assertThat(many).contains("B002", "In passing", "rules about \"heel\"");
    assertThat(many.lines()).allMatch(line -> line.length() <= 80);
    JsonNode json = Program.run("rules", "list", "quarter crack", "--format", "json").done().json();
    assertThat(json.findValuesAsText("id")).contains("K034", "K042").doesNotContain("K035");
    assertThat(Program.run("rules", "list", "nailing").done().out())
        .isEqualTo(Program.once("rules", "list", "--topic", "nailing").done().out());
    assertThat(Program.run("rules", "list", "thrus").refused(2).err()).contains("nearest: thrush");
  }

  @Test
  void a_word_of_the_trade_is_shown_with_its_meaning_and_its_rules() {
    String shown = Program.run("rules", "show", "Close nails").done().out();
    assertThat(shown).contains("A word of the trade", "close nail: ", "rules show ");
    assertThat(Program.run("rules", "show", "quarter crack").done().out()).contains("K042");
    JsonNode json = Program.run("rules", "show", "thrush", "--format", "json").done().json();
    assertThat(json.path("word").asText()).isEqualTo("thrush");
    assertThat(json.path("says").asText()).isNotBlank();
    assertThat(json.path("rules")).map(JsonNode::asText).contains("A015");
    assertThat(Program.run("rules", "show", "nailing").refused(2).err()).contains("--topic");
  }

  @Test
  void a_rule_is_shown_with_its_grounds_and_its_case() {
    String shown = Program.run("rules", "show", "n003").done().out();
    assertThat(shown)
        .contains(
            "N003",
            "Says",
            "Applies if all of this is known",
            "nail sites, weaker branch: less than 2")
        .contains("Then", "rules out a nailed shoe", "Why", "When silent", "Limits")
        .contains("nails.branch.least", "at least 2; basis: published", "but ", "Sources")
        .contains("cases/rules/N003.yaml", "--set");
    assertThat(shown).doesNotContain("{", "$", "==");
  }

  @Test
  void the_case_shown_fires_the_rule_and_the_change_shown_silences_it() {
    List<String> lines = Program.run("rules", "show", "N003").done().out().lines().toList();
    String file =
        lines.stream()
            .filter(line -> line.contains("hornbook assess "))
            .map(line -> line.strip().substring("hornbook assess ".length()))
            .findFirst()
            .orElseThrow();
    String change =
        lines.stream()
            .filter(line -> line.contains("--set "))
            .map(line -> line.substring(line.indexOf('"') + 1, line.lastIndexOf('"')))
            .findFirst()
            .orElseThrow();
    assertThat(Program.run("assess", "--full", file).done().out()).contains("N003");
    Program.Run silenced = Program.run("assess", "--format", "json", "--set", change, file);
    assertThat(silenced.done().out()).doesNotContain("\"N003\"");
  }

  @Test
  void every_rule_of_the_catalogue_can_be_shown() {
    // One run for each topic: all of them would take minutes.
    JsonNode all = Program.once("rules", "list", "--format", "json").done().json().path("rules");
    List<String> first = new ArrayList<>();
    List<String> topics = new ArrayList<>();
    for (JsonNode rule : all) {
      if (!topics.contains(rule.path("topic").asText())) {
        topics.add(rule.path("topic").asText());
        first.add(rule.path("id").asText());
      }
    }
    for (String id : first) {
      assertThat(Program.run("rules", "show", id).done().out()).startsWith(id).doesNotContain("{");
      JsonNode json = Program.run("rules", "show", id, "--format", "json").done().json();
      assertThat(json.path("id").asText()).isEqualTo(id);
      assertThat(json.path("conditions")).isNotEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "nails.branch.least, A limit, Rules that use it, limits",
    "low-heels, A finding, Found by, finding",
    "glue-on, A technique, Ruled out by, technique",
    "egg-bar, A support, For it, support",
    "lungwitz-1913, A source, Limits that rest on it, source"
  })
  void other_things_are_shown_by_their_names(String id, String kind, String part, String key) {
    String shown = Program.run("rules", "show", id).done().out();
    assertThat(shown).startsWith(kind).contains(id, part);
    JsonNode json = Program.run("rules", "show", id, "--format", "json").done().json();
    assertThat(json.has(key)).isTrue();
  }

  @Test
  void limits_are_shown_in_inches_on_request() {
    assertThat(Program.run("rules", "show", "nails.wall.least", "--units", "inch").done().out())
        .contains("at least 1/4 in;")
        .doesNotContain("6.5 mm;");
    assertThat(Program.run("rules", "show", "nails.wall.least").done().out()).contains("6.5 mm;");
  }

  @Test
  void lists_go_to_a_file(@TempDir Path folder) {
    Path output = folder.resolve("rules.txt");
    assertThat(Program.run("rules", "list", "--output", output.toString()).done().out()).isEmpty();
    assertThat(output).content().isEqualTo(Program.once("rules", "list").done().out());
  }

  @Test
  void a_questionnaire_is_written_filled_in_and_read_back(@TempDir Path folder) throws IOException {
    Path blank = folder.resolve("blank.csv");
    Program.run("rules", "review", "--output", blank.toString()).done();
    List<String> rows = Files.readAllLines(blank);
    String id = "nails.branch.least,";
    String row = rows.stream().filter(one -> one.startsWith(id)).findFirst().orElseThrow();
    String[] filled = new String[2];
    for (int person = 0; person < filled.length; person++) {
      filled[person] = folder.resolve("person" + person + ".csv").toString();
      String answer = row.replaceAll(",,,,,$", ",no," + (3 + person) + ",,person " + person + ",9");
      assertThat(answer).isNotEqualTo(row);
      Files.write(Path.of(filled[person]), List.of(rows.get(0), answer));
    }
    String told = Program.run("rules", "review", "--read", filled[0], filled[1]).done().out();
    assertThat(told)
        .contains("2 people on 1 limit. Nothing is changed.", "median 3.5, from 3 to 4");
    Files.write(Path.of(filled[1]), List.of(rows.get(0), row.replaceAll(",,,,,$", ",no,x,,B,9")));
    assertThat(Program.run("rules", "review", "--read", filled[0], filled[1]).refused(65).err())
        .contains("person1.csv:2", "\"x\"", "an amount");
    assertThat(Program.run("rules", "review", "--read", "none.csv").refused(66).err())
        .contains("there is no file none.csv")
        .doesNotContain("hornbook new");
    Program.run("rules", "review", "--read").refused(2);
  }
}
