package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How steady the advice is, as the packaged program tells it. */
class ConfidenceIT {
  private static final String TORN = Program.exercise("showjumper-torn-side");
  private static final String PAIR = Program.exercise("long-toe-under-run-heels");

  @TempDir Path folder;

  private static Program.Run confidence(String... more) {
    List<String> command = new ArrayList<>(List.of("confidence"));
    command.addAll(List.of(more));
    return Program.run(command.toArray(String[]::new));
  }

  @Test
  void ten_thousand_runs_are_drawn_and_what_decides_is_named_with_its_error() {
    String text = confidence(TORN).done().out();
    assertThat(text)
        .startsWith("Left fore: how steady the advice is. 10000 runs, seed 1\n")
        .contains("First choice: a glued shoe", "Calls for the vet", "Worth measuring again")
        .contains("stretch 3 of the wall: to", "± 2 mm", "Measure to know, not until it fits")
        .contains("a length: ± 2 mm (derived)", "not a diagnosis");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void json_gives_shares_that_sum_to_one_for_every_technique() {
    JsonNode json = confidence(TORN, "--runs", "500", "--format", "json").done().json();
    assertThat(json.path("format").asText()).isEqualTo("hornbook-confidence/1");
    assertThat(json.path("runs").asInt()).isEqualTo(500);
    assertThat(json.path("seed").asLong()).isEqualTo(1);
    assertThat(json.path("verdicts")).hasSize(11);
    for (Map.Entry<String, JsonNode> technique : json.path("verdicts").properties()) {
      double sum = 0;
      for (JsonNode share : technique.getValue()) {
        sum += share.doubleValue();
      }
      assertThat(sum).as(technique.getKey()).isCloseTo(1, within(1e-9));
    }
    assertThat(json.path("referrals").isObject()).isTrue();
    JsonNode retake = json.path("retake").path(0);
    assertThat(retake.path("field").asText()).isEqualTo("feet[0].wall[2].to");
    assertThat(retake.path("explains").doubleValue()).isBetween(0.1, 1.0);
    assertThat(json.path("practice").isNull()).isTrue();
  }

  @Test
  void the_same_seed_gives_the_same_page_and_another_seed_another() {
    String once = confidence(TORN, "--runs", "100", "--seed", "-7").done().out();
    assertThat(confidence(TORN, "--runs", "100", "--seed", "-7").done().out()).isEqualTo(once);
    String other = confidence(TORN, "--runs", "100", "--seed", "8").done().out();
    assertThat(other.replace("seed 8", "seed -7")).isNotEqualTo(once);
  }

  @Test
  void every_foot_is_told_of_or_the_one_asked_for() {
    assertThat(confidence(PAIR, "--runs", "20").done().out())
        .contains("Left fore: how steady", "Right fore: how steady");
    assertThat(confidence(PAIR, "--runs", "20", "--foot", "right-fore").done().out())
        .startsWith("Right fore: how steady")
        .doesNotContain("Left fore");
    JsonNode feet = confidence(PAIR, "--runs", "20", "--format", "json").done().json();
    assertThat(feet.path("feet").findValuesAsText("limb"))
        .containsExactly("left-fore", "right-fore");
  }

  @Test
  void a_local_measuring_error_is_drawn_from_and_told_of() throws IOException {
    Path yard = folder.resolve("yard.yaml");
    Files.writeString(
        yard,
        """
        format: hornbook-practice/1
        name: Upper Yard
        by: the head farrier
        date: 2026-03-14
        limits:
          - {id: error.length, value: 1 mm, reason: "we measure twice, with a steel rule"}
        """);
    JsonNode usual = confidence(TORN, "--runs", "500", "--format", "json").done().json();
    String[] ours = {
      TORN, "--practice", yard.toString(), "--accept-less-safe", "--runs", "500", "--format"
    };
    JsonNode local = confidence(with(ours, "json")).done().json();
    assertThat(local.path("steady").doubleValue())
        .isGreaterThan(usual.path("steady").doubleValue());
    assertThat(local.path("practice").path("limits").path(0).path("touches").asBoolean()).isTrue();
    String text = confidence(with(ours, "text")).done().out();
    assertThat(text)
        .contains("LOCAL PRACTICE: Upper Yard", "1 mm in place of 2 mm", "a length: ± 1 mm");
  }

  private static String[] with(String[] some, String last) {
    String[] all = Arrays.copyOf(some, some.length + 1);
    all[some.length] = last;
    return all;
  }

  @Test
  void a_foot_on_which_nothing_was_measured_has_nothing_to_be_unsure_of() throws IOException {
    Path seen = folder.resolve("seen.yaml");
    Files.writeString(
        seen,
        """
        format: hornbook-assessment/1
        feet:
          - {limb: left-fore, signs: {digitalPulse: bounding}}
        """);
    assertThat(confidence(seen.toString(), "--runs", "20").done().out())
        .contains("Nothing was measured");
    JsonNode json = confidence(seen.toString(), "--runs", "20", "--format", "json").done().json();
    assertThat(json.path("steady").doubleValue()).isEqualTo(1);
    assertThat(json.path("retake")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "--runs, 0, 1 to",
    "--runs, many, a whole number",
    "--seed, one, a whole number",
    "--foot, left-frore, left-fore",
    "--foot, left-hind, left-hind",
    "--format, html, json"
  })
  void a_wrong_option_is_told_with_what_is_allowed(String option, String value, String says) {
    assertThat(confidence(TORN, option, value).refused(2).err()).contains(says);
  }

  @Test
  void a_bar_shows_on_a_terminal_when_it_lasts_and_the_work_may_be_broken_off() throws Exception {
    try (Typist typist = Typist.at(folder, "confidence", PAIR, "--runs", "200000")) {
      typist.sees("[=").types(Typist.CTRL_C);
      typist.endsWith(130);
    }
  }
}
