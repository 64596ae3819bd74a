package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The smallest changes that change the advice, from the packaged program and back into it. */
class ContrastIT {
  private static final String TORN = Program.exercise("showjumper-torn-side");
  private static final String PAIR = Program.exercise("long-toe-under-run-heels");

  @TempDir Path folder;

  /** The lines as printed go through a shell, as a farrier would copy them. */
  @Test
  void the_lines_printed_bring_about_what_is_promised() {
    String text = Program.run("contrast", TORN, "--to", "nail-on-adapted").done().out();
    assertThat(text).startsWith("Left fore: what would make this the first choice: a shoe nailed");
    List<String> lines = text.lines().toList();
    int first = -1;
    for (int at = lines.size() - 1; at >= 0; at--) {
      first = lines.get(at).startsWith("1. ") ? at : first;
    }
    List<String> settings =
        lines.subList(first, lines.size()).stream()
            .dropWhile(line -> !line.contains("--set "))
            .takeWhile(line -> line.contains("--set "))
            .map(String::strip)
            .toList();
    assertThat(settings).isNotEmpty();
    String command =
        "'%s/bin/hornbook' assess '%s' --format json %s"
            .formatted(Program.HOME, TORN, String.join(" ", settings));
    JsonNode advice = Program.here().command(List.of("sh", "-c", command)).done().json();
    assertThat(verdict(advice, "nail-on-adapted")).isEqualTo("first-choice");
  }

  private static String verdict(JsonNode advice, String technique) {
    JsonNode techniques = advice.path("feet").path(0).path("techniques");
    return StreamSupport.stream(techniques.spliterator(), false)
        .filter(one -> one.path("technique").asText().equals(technique))
        .findFirst()
        .orElseThrow()
        .path("verdict")
        .asText();
  }

  @Test
  void every_change_in_json_comes_about_beside_settings_of_ones_own() {
    String own = "feet[0].measures.toeAngle=52 deg";
    JsonNode json =
        Program.run("contrast", TORN, "--set", own, "--most", "3", "--format", "json")
            .done()
            .json();
    assertThat(json.path("format").asText()).isEqualTo("hornbook-contrast/1");
    assertThat(json.path("changes")).hasSize(3);
    for (JsonNode change : json.path("changes")) {
      List<String> command = new ArrayList<>(List.of("assess", TORN, "--format", "json"));
      command.addAll(List.of("--set", own));
      for (JsonNode set : change.path("set")) {
        command.addAll(
            List.of("--set", set.path("field").asText() + "=" + set.path("to").asText()));
      }
      JsonNode advice = Program.run(command.toArray(String[]::new)).done().json();
      for (JsonNode turn : change.path("gives")) {
        if (turn.has("technique")) {
          assertThat(verdict(advice, turn.path("technique").asText()))
              .isEqualTo(turn.path("to").asText());
        } else {
          assertThat(advice.toString())
              .contains(turn.path(turn.has("support") ? "support" : "referral").asText());
        }
      }
    }
  }

  @Test
  void every_foot_is_told_of_or_the_one_asked_for() {
    assertThat(Program.run("contrast", PAIR, "--most", "1").done().out())
        .contains("Left fore: what would change", "Right fore: what would change");
    JsonNode feet = Program.run("contrast", PAIR, "--most", "1", "--format", "json").done().json();
    assertThat(feet.path("feet").findValuesAsText("limb"))
        .containsExactly("left-fore", "right-fore");
    assertThat(Program.run("contrast", PAIR, "--foot", "right-fore", "--most", "1").done().out())
        .startsWith("Right fore: what would change")
        .doesNotContain("Left fore");
  }

  @Test
  void a_practice_counts_and_stands_on_the_page() {
    String yard =
        Written.file(
            folder,
            "yard.yaml",
            """
            format: hornbook-practice/1
            name: Upper Yard
            by: the head farrier
            date: 2026-03-14
            limits:
              - {id: error.length, value: 4 mm, reason: we measure with a tape}
            """);
    String text = Program.run("contrast", TORN, "--practice", yard).done().out();
    assertThat(text.replaceAll("\\s+", " "))
        .contains("Upper Yard", "we measure with a tape")
        .contains("measuring error of a length: ± 4 mm (practice)");
  }

  @Test
  void a_command_line_that_is_not_in_order_ends_with_2() {
    assertThat(Program.run("contrast", TORN, "--to", "nail-onn").refused(2).err())
        .contains("there is no technique or support \"nail-onn\"", "nearest: nail-on");
    assertThat(Program.run("contrast", TORN, "--most", "0").refused(2).err())
        .contains("--most cannot be \"0\"", "a whole number from 1 to 100");
    assertThat(Program.run("contrast", TORN, "--foot", "left-hind").refused(2).err())
        .contains("there is no left-hind in this assessment");
    assertThat(Program.run("contrast").refused(2).err()).contains("contrast needs FILE");
  }

  @Test
  void a_file_that_is_none_ends_with_65_or_66() {
    String wrong = Written.file(folder, "wrong.yaml", Written.PLAIN.replace("left-fore", "left"));
    assertThat(Program.run("contrast", wrong).refused(65).err()).contains(wrong, "feet[0].limb");
    assertThat(Program.run("contrast", folder.resolve("none.yaml").toString()).refused(66).err())
        .contains("there is no file");
  }
}
