package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A stream of assessments through the packaged program. */
class BatchIT {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> NAMES =
      List.of(
          "showjumper-torn-side", "foal-trim", "sound-hunter-reset", "quarter-crack-that-bleeds");

  @TempDir Path folder;

  /** The assessment of an exercise on one line of JSON. */
  private static String line(String name) throws IOException {
    Load yaml = new Load(LoadSettings.builder().build());
    JsonNode file =
        JSON.valueToTree(yaml.loadFromString(Files.readString(Path.of(Program.exercise(name)))));
    return JSON.writeValueAsString(file.path("assessment"));
  }

  private static List<String> lines() throws IOException {
    List<String> lines = new ArrayList<>();
    for (String name : NAMES) {
      lines.add(line(name));
    }
    return lines;
  }

  private static JsonNode assessed(String name, String... options) {
    List<String> command =
        new ArrayList<>(List.of("assess", Program.exercise(name), "--format", "json"));
    command.addAll(List.of(options));
    return Program.once(command.toArray(String[]::new)).done().json();
  }

  @Test
  void every_line_is_advised_as_its_file_would_be_and_in_order() throws IOException {
    String input = String.join("\n", lines()) + "\n";
    List<String> out =
        Program.here().input(input.repeat(25)).with("batch", "-").done().out().lines().toList();
    assertThat(out).hasSize(25 * NAMES.size());
    for (int at = 0; at < NAMES.size(); at++) {
      assertThat(JSON.readTree(out.get(at))).isEqualTo(assessed(NAMES.get(at)));
      for (int again = 1; again < 25; again++) {
        assertThat(out.get(again * NAMES.size() + at)).isEqualTo(out.get(at));
      }
    }
  }

  @Test
  void brief_is_the_same_of_a_line_as_of_a_file_and_leaves_out_what_it_says_it_does()
      throws IOException {
    Path input = Files.writeString(folder.resolve("yard.ndjson"), String.join("\n", lines()));
    List<String> out =
        Program.run("batch", "--brief", input.toString()).done().out().lines().toList();
    assertThat(out).hasSize(NAMES.size());
    for (int at = 0; at < NAMES.size(); at++) {
      JsonNode brief = JSON.readTree(out.get(at));
      assertThat(brief).isEqualTo(assessed(NAMES.get(at), "--brief"));
      ObjectNode expected = (ObjectNode) assessed(NAMES.get(at));
      expected.put("brief", true);
      for (JsonNode foot : expected.path("feet")) {
        ((ObjectNode) foot).putArray("measures");
        ((ObjectNode) foot).putArray("cautions");
        ((ObjectNode) foot).putArray("questions");
        for (String list : List.of("techniques", "supports")) {
          for (JsonNode option : foot.path(list)) {
            if (option.path("verdict").asText().equals("not-indicated")) {
              ((ObjectNode) option).putArray("reasons");
            }
          }
        }
      }
      assertThat(brief).isEqualTo(expected);
    }
  }

  @Test
  void a_line_that_is_no_assessment_gives_its_faults_and_the_rest_goes_on() throws IOException {
    String good = line("foal-trim");
    String input =
        good
            + "\n\n   \r\n"
            + "{\"format\":\"hornbook-assessment/1\"}\n"
            + "no JSON at all\n"
            + "{\"format\":\"hornbook-assessment/1\",\"feet\":[{\"limb\":\"left-fore\",\"lameness\":9}]}\r\n"
            + good;
    Program.Run run = Program.here().input(input).with("batch", "-").ended(65);
    List<String> out = run.out().lines().toList();
    assertThat(out).hasSize(5);
    assertThat(JSON.readTree(out.get(0))).isEqualTo(assessed("foal-trim"));
    assertThat(out.get(4)).isEqualTo(out.get(0));
    assertThat(faults(out.get(1), 4).path(0).path("path").asText()).isEqualTo("feet");
    assertThat(faults(out.get(2), 5)).hasSize(1);
    JsonNode lameness = faults(out.get(3), 6).path(0);
    assertThat(lameness.path("path").asText()).isEqualTo("feet[0].lameness");
    assertThat(lameness.path("found").asText()).contains("9");
    assertThat(lameness.path("allowed").asText()).contains("5");
    assertThat(run.err()).contains("3 lines are not valid assessments", "hornbook-faults/1");
  }

  private static JsonNode faults(String line, int number) throws IOException {
    JsonNode faults = JSON.readTree(line);
    assertThat(faults.path("format").asText()).isEqualTo("hornbook-faults/1");
    assertThat(faults.path("line").asInt()).isEqualTo(number);
    return faults.path("faults");
  }

  @Test
  void a_line_longer_than_any_file_may_be_is_a_fault_of_that_line_alone() throws IOException {
    String good = line("foal-trim");
    String input = "{\"horse\":\"" + "x".repeat(5 << 20) + "\"}\n" + good + "\n";
    List<String> out =
        Program.here().input(input).with("batch", "-").ended(65).out().lines().toList();
    assertThat(out).hasSize(2);
    assertThat(faults(out.get(0), 1)).hasSize(1);
    assertThat(JSON.readTree(out.get(1))).isEqualTo(assessed("foal-trim"));
  }

  @Test
  void a_reader_that_has_seen_enough_is_no_failure() throws IOException {
    Path input = folder.resolve("many.ndjson");
    Files.writeString(input, (line("foal-trim") + "\n").repeat(3000));
    String line =
        "'" + Program.HOME.resolve("bin/hornbook") + "' batch '" + input + "' | head -n 1";
    Program.Run run = Program.here().command(List.of("bash", "-o", "pipefail", "-c", line)).done();
    assertThat(run.out().lines()).hasSize(1);
  }

  @Test
  void the_output_file_is_whole_or_not_there() throws IOException {
    Path input = Files.writeString(folder.resolve("yard.ndjson"), String.join("\n", lines()));
    Path output = folder.resolve("advice.ndjson");
    assertThat(Program.run("batch", input.toString(), "-o", output.toString()).done().out())
        .isEmpty();
    assertThat(Files.readAllLines(output)).hasSize(NAMES.size());
    Program.run("batch", input.toString(), "-o", input.toString()).refused(2);
    Program.run("batch", folder.resolve("none.ndjson").toString()).refused(66);
    Program.run("batch", folder.toString()).refused(66);
  }

  /** As the README has it, with the tools every Linux and macOS has. */
  @Test
  void as_the_mapper_of_something_that_hands_out_lines_it_says_the_same() throws Exception {
    Path yards =
        Files.writeString(
            folder.resolve("yards.ndjson"), String.join("\n", lines()).concat("\n").repeat(5));
    String whole = Program.run("batch", "--brief", yards.toString()).done().out();
    String mapped =
        "split -l 7 yards.ndjson part- && ls part-* | xargs -P 2 -I{} '"
            + Program.HOME.resolve("bin/hornbook")
            + "' batch --brief {} --output {}.advice && cat part-*.advice";
    Process shell =
        new ProcessBuilder("sh", "-c", mapped)
            .directory(folder.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    assertThat(new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
        .isEqualTo(whole);
    assertThat(shell.waitFor()).isZero();
  }
}
