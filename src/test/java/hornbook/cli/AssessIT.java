package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The main job, as the shell sees it. */
class AssessIT {
  private static final String FOAL = exercise("foal-trim");

  @TempDir Path folder;

  @Test
  void advises_in_text_of_eighty_columns() {
    String text = Program.once("assess", FOAL).done().out();
    assertThat(text).contains("Pipit", "LEFT FORE", "FIRST CHOICE: no shoe", "not a diagnosis");
    assertThat(text.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    assertThat(text).doesNotContain("\u001b", "null");
  }

  @Test
  void advises_in_json() {
    JsonNode advice = Program.once("assess", "--format", "json", FOAL).done().json();
    assertThat(advice.path("format").asText()).isEqualTo("hornbook-advice/1");
    assertThat(advice.path("horse").asText()).isEqualTo("Pipit");
    assertThat(advice.path("feet").path(0).path("techniques")).hasSize(11);
    assertThat(advice.path("feet").path(0).path("supports")).hasSize(17);
  }

  @Test
  void reads_standard_input() {
    String named = Program.once("assess", FOAL).done().out();
    Program.Run piped = Program.here().input(read(Path.of(FOAL))).with("assess", "-");
    assertThat(piped.done().out()).isEqualTo(named);
  }

  @Test
  void advises_on_several_files_in_their_order() {
    String plain = Written.file(folder, "plain.yaml", Written.PLAIN);
    String text = Program.run("assess", FOAL, plain).done().out();
    assertThat(text).containsSubsequence(FOAL + ":", "Pipit", plain + ":", "Bracken");
    List<JsonNode> each =
        Program.run("assess", "--format", "json", FOAL, plain)
            .done()
            .out()
            .lines()
            .map(line -> new Program.Run(0, line, "").json())
            .toList();
    assertThat(each).map(one -> one.path("horse").asText()).containsExactly("Pipit", "Bracken");
    assertThat(each.get(0))
        .isEqualTo(Program.once("assess", "--format", "json", FOAL).done().json());
  }

  @Test
  void says_the_same_every_time() {
    String file = exercise("quarter-crack-that-bleeds");
    String once = Program.run("assess", "--full", file).done().out();
    assertThat(Program.run("assess", "--full", file).done().out()).isEqualTo(once);
  }

  @Test
  void sets_fields_for_one_run() {
    String file = Written.file(folder, "plain.yaml", Written.PLAIN);
    assertThat(urgency(Program.run("assess", "--format", "json", file))).isNotEqualTo("now");
    Program.Run set =
        Program.run(
            "assess",
            "--format",
            "json",
            "--set",
            "feet[left-fore].signs.objectInPlace=true",
            "--set",
            "horse.name=Clover",
            file);
    assertThat(urgency(set)).isEqualTo("now");
    assertThat(set.json().path("horse").asText()).isEqualTo("Clover");
    assertThat(read(Path.of(file))).isEqualTo(Written.PLAIN);
  }

  @Test
  void tells_lengths_in_inches() {
    String file = exercise("long-toe-under-run-heels");
    String millimetres = Program.once("assess", "--full", file).done().out();
    String inches = Program.run("assess", "--full", "--units", "inch", file).done().out();
    assertThat(millimetres).contains(" mm").doesNotContain(" lb");
    assertThat(inches).contains(" in", " lb").doesNotContain(" mm", " kg");
  }

  @Test
  void tells_more_or_less() {
    String file = exercise("racehorse-both-sides-broken");
    long brief = Program.run("assess", "--brief", file).done().out().lines().count();
    long usual = Program.run("assess", file).done().out().lines().count();
    long full = Program.run("assess", "--full", file).done().out().lines().count();
    assertThat(brief).isLessThanOrEqualTo(15);
    assertThat(usual).isGreaterThan(brief).isLessThan(full);
  }

  @ParameterizedTest
  @CsvSource({
    "now, 1, 0",
    "today, 1, 0",
    "days, 1, 0",
    "mention, 1, 0",
  })
  void stops_a_script_where_the_vet_is_wanted(String urgency, int nailInFoot, int sound) {
    String hurt = Written.file(folder, "hurt.yaml", Written.NAIL_IN_FOOT);
    String plain = Written.file(folder, "plain.yaml", Written.PLAIN);
    Program.Run met = Program.run("assess", "--fail-on", urgency, plain, hurt).ended(nailInFoot);
    assertThat(met.out()).contains("Bracken", "Sorrel");
    Program.run("assess", "--fail-on", urgency, plain).ended(sound);
  }

  @Test
  void a_less_urgent_call_does_not_stop_a_stricter_script() {
    String file = exercise("quarter-crack-that-bleeds");
    String urgency = urgency(Program.run("assess", "--format", "json", file));
    assertThat(urgency).isIn("today", "days");
    Program.run("assess", "--fail-on", "now", file).ended(0);
    Program.run("assess", "--fail-on", "days", file).ended(1);
  }

  @Test
  void writes_a_file_in_place_of_the_screen() throws IOException {
    Path output = folder.resolve("advice.txt");
    Program.Run run = Program.run("assess", "--output", output.toString(), FOAL).done();
    assertThat(run.out()).isEmpty();
    assertThat(output).content().isEqualTo(Program.once("assess", FOAL).done().out());
    Program.run("assess", "--format", "json", "-o", output.toString(), FOAL).done();
    assertThat(output).content().startsWith("{");
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(output);
    }
  }

  private static String urgency(Program.Run run) {
    return run.done().json().path("urgency").asText();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }
}
