package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.rules.WrongRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rule bases in good order and in none, looked over by the packaged program. */
class RulesCheckIT {
  @TempDir private Path folder;
  @TempDir private Path cache;

  private Program.Run run(String... command) {
    return Program.here()
        .from(folder)
        .environment("XDG_CACHE_HOME", cache.toString())
        .with(command);
  }

  private void replace(String file, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(from);
    Files.writeString(folder.resolve(file), text.replace(from, to));
  }

  @Test
  void rules_nobody_trusts_are_read_and_not_run() throws IOException {
    WrongRules.layOutGood(folder);
    String told = run("rules", "check", "rules").done().out().replaceAll("\\s+", " ");
    assertThat(told).contains("12 rules", "not run", "add --trust-rules", "in what was read");
    Path one = folder.resolve("cases/rules/S004.yaml");
    String written = Files.readString(one);
    Files.delete(one);
    assertThat(run("rules", "check", "rules").ended(1).out())
        .contains("S004: the rule has no case", "add --trust-rules");
    Files.writeString(one, written);
    assertThat(cache).isEmptyDirectory();
    JsonNode run =
        run("rules", "check", "--rules", "rules", "--trust-rules", "--format", "json")
            .done()
            .json();
    assertThat(run.path("format").asText()).isEqualTo("hornbook-rules-check/1");
    assertThat(run.path("faults")).isEmpty();
    assertThat(run.path("notRun").isNull()).isTrue();
    assertThat(run.at("/read/rules").asInt()).isEqualTo(12);
    assertThat(run.at("/run/cases").asInt()).isEqualTo(12);
    assertThat(run.at("/run/feet").asInt()).isGreaterThanOrEqualTo(1000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"limit-without-source", "opposite-where-they-overlap"})
  void what_is_wrong_is_told_with_place_and_cure(String name) throws IOException {
    WrongRules.Wrong wrong = WrongRules.named(name);
    wrong.layOut(folder);
    String told = run("rules", "check", "rules", "--trust-rules").ended(1).out();
    assertThat(told.lines()).allMatch(line -> line.length() <= 80);
    String flowing = told.replaceAll("\\s+", " ");
    for (Map<String, String> fault : wrong.faults()) {
      assertThat(flowing).contains(fault.get("place"), fault.get("says"), fault.get("cure"));
    }
  }

  @Test
  void faults_are_told_to_programs_too() throws IOException {
    WrongRules.Wrong wrong = WrongRules.named("number-in-a-condition");
    wrong.layOut(folder);
    JsonNode json = run("rules", "check", "rules", "--format", "json").ended(1).json();
    assertThat(json.path("notRun").asText()).isEqualTo("faulty");
    assertThat(json.path("faults")).hasSize(1);
    JsonNode fault = json.at("/faults/0");
    String place = fault.path("file").asText() + ":" + fault.path("line").asInt();
    assertThat(place + ": " + fault.path("rule").asText())
        .isEqualTo(wrong.faults().get(0).get("place"));
    assertThat(fault.path("says").asText()).isEqualTo(wrong.faults().get(0).get("says"));
    assertThat(fault.path("cure").asText()).isEqualTo(wrong.faults().get(0).get("cure"));
  }

  /** The cure told for two rules at odds cures, where the second is another author's view. */
  @Test
  void two_rules_at_odds_may_be_an_open_dissent() throws IOException {
    WrongRules.named("opposite-where-they-overlap").layOut(folder);
    replace("rules/fixing/ways.yaml", "F005: {", "F005: {dissents: [F001], ");
    run("rules", "check", "rules", "--trust-rules").done();
  }

  @Test
  void a_limit_no_case_goes_over_is_a_hole() throws IOException {
    WrongRules.layOutGood(folder);
    replace("cases/rules/S004.yaml", "over: 56 deg", "over: 55 deg");
    Path others = Files.move(folder.resolve("cases"), folder.resolve("others"));
    replace("others/rules/S004.yaml", "toeAngle: 58", "toeAngle: 55");
    Program.Run run =
        run("rules", "coverage", "--rules", "rules", "--trust-rules", "--cases", "others");
    assertThat(run.ended(1).out().replaceAll("\\s+", " "))
        .contains("HOLES", "S004", "no case makes it apply")
        .contains("angle.most, steepest usual toe: 55° no case over it");
    JsonNode json =
        run(
                "rules",
                "coverage",
                "--rules",
                "rules",
                "--trust-rules",
                "--cases",
                "others",
                "--format",
                "json")
            .ended(1)
            .json();
    assertThat(json.path("format").asText()).isEqualTo("hornbook-rules-coverage/1");
    assertThat(json.path("whole").asBoolean()).isFalse();
    assertThat(json.path("rules")).hasSize(12);
    assertThat(json.path("limits").findParents("holes"))
        .filteredOn(limit -> !limit.path("holes").isEmpty())
        .singleElement()
        .satisfies(limit -> assertThat(limit.path("id").asText()).isEqualTo("angle.most"));
    assertThat(others).isDirectory();
    run("rules", "coverage", "--cases", "nowhere").refused(66);
  }

  @Test
  void what_cannot_be_looked_over_is_told_as_such() throws IOException {
    WrongRules.layOutGood(folder);
    run("rules", "check", "nowhere").refused(66);
    run("rules", "check", "rules", "--rules", "rules").refused(2);
    run("rules", "check", "--trust-rules").refused(2);
    replace("cases/rules/S004.yaml", "nearMiss", "nearMis");
    assertThat(run("rules", "coverage", "--rules", "rules", "--trust-rules").refused(65).err())
        .contains("cases/rules/S004.yaml");
  }
}
