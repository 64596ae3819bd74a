package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is no assessment is refused whole, with every fault told in words for people. */
class WrongInputIT {
  @TempDir Path folder;

  static Stream<Arguments> wrong() {
    String plain = Written.PLAIN;
    return Stream.of(
        wrong("nothing at all", "", List.of(":1:1", "an empty file")),
        wrong("blanks only", " \n\n\t\n", List.of("found")),
        wrong("prose", "The near fore is broken at the toe.\n", List.of(":1:1", "allowed")),
        wrong("a list", "- one\n- two\n", List.of(":1:1", "allowed")),
        wrong("another format", plain.replace("assessment/1", "assessment/9"), List.of("format")),
        wrong("no format", plain.replace("format: hornbook-assessment/1\n", ""), List.of("format")),
        wrong("no feet", plain.substring(0, plain.indexOf("feet:")), List.of("feet")),
        wrong(
            "an unknown word",
            plain.replace("pulse: normal", "pulse: x").replace("Pulse: normal", "Pulse: boundin"),
            List.of(
                ":6:49",
                "feet[0].signs.digitalPulse",
                "\"boundin\"",
                "raised",
                "nearest  bounding")),
        wrong(
            "an unknown key",
            plain.replace("toeLength", "toeLenght"),
            List.of("feet[0].measures.toeLenght", "nearest  toeLength")),
        wrong(
            "a key twice",
            plain.replace("name: Bracken", "name: Bracken, name: Fern"),
            List.of(":2:", "horse.name")),
        wrong(
            "a unit of another kind", plain.replace("92 mm", "92 kg"), List.of("\"92 kg\"", "mm")),
        wrong("a length beyond any horse", plain.replace("92 mm", "92 m"), List.of("toeLength")),
        wrong("a number for a word", plain.replace("left-fore", "7"), List.of("feet[0].limb")),
        wrong("a group for a number", plain.replace("92 mm", "{a: 1}"), List.of("toeLength")),
        wrong("a bracket left open", plain.replace("kg}", "kg"), List.of(":3:5", "line 2")),
        wrong("tabs for blanks", plain.replace("\n  - limb", "\n\t- limb"), List.of(":4:")),
        wrong("an alias", plain.replace("Bracken", "*other"), List.of(":2:")),
        wrong("two papers", plain + "---\n" + plain, List.of("found")),
        wrong("broken JSON", "{\"format\": \"hornbook-assessment/1\", ", List.of(":1:")),
        wrong("JSON and more", "{\"format\": 1} {}", List.of(":1:")),
        wrong("a foot twice", plain + "  - limb: left-fore\n", List.of("feet[1].limb")));
  }

  private static Arguments wrong(String what, String text, List<String> told) {
    return Arguments.of(what, text, told);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrong")
  void tells_the_place_and_what_is_allowed(String what, String text, List<String> told) {
    String file = Written.file(folder, "wrong.yaml", text);
    Path output = folder.resolve("advice.json");
    Program.Run run =
        Program.run("assess", "--format", "json", "--output", output.toString(), file).refused(65);
    assertThat(run.err()).startsWith(file + ":").contains(told).contains("nothing was written");
    assertThat(run.err()).contains("found", "allowed");
    assertThat(output).doesNotExist();
  }

  static Stream<Arguments> bytes() {
    byte[] big = "a: b\n".repeat((4 << 20) / 5 + 1).getBytes(StandardCharsets.UTF_8);
    byte[] utf16 = Written.PLAIN.getBytes(StandardCharsets.UTF_16);
    byte[] latin =
        Written.PLAIN.replace("Bracken", "F\u00e9e").getBytes(StandardCharsets.ISO_8859_1);
    byte[] picture = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13};
    return Stream.of(
        Arguments.of("more than 4 MB", big, "4194304 bytes"),
        Arguments.of("UTF-16", utf16, "UTF-8"),
        Arguments.of("Latin-1", latin, "UTF-8"),
        Arguments.of("a picture", picture, "UTF-8"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bytes")
  void refuses_what_is_no_text_from_file_and_from_standard_input(
      String what, byte[] bytes, String told) throws IOException {
    Path file = Files.write(folder.resolve("wrong.yaml"), bytes);
    assertThat(Program.run("assess", file.toString()).refused(65).err()).contains(told);
    Program.Run piped = Program.here().input(bytes).with("assess", "-").refused(65);
    assertThat(piped.err()).startsWith("standard input:").contains(told);
  }

  @Test
  void tells_every_fault_of_every_file_and_advises_on_none() {
    String good = Written.file(folder, "good.yaml", Written.PLAIN);
    String one = Written.file(folder, "one.yaml", Written.PLAIN.replace("left-fore", "left-for"));
    String two =
        Written.file(
            folder,
            "two.yaml",
            Written.PLAIN.replace("kg", "stone").replace("normal", "norml").replace("92", "x"));
    Program.Run run = Program.run("assess", good, one, two).refused(65);
    assertThat(run.err())
        .containsSubsequence(one + ":4:11", two + ":2:", two + ":5:", two + ":6:")
        .contains("horse.weight", "feet[0].measures.toeLength", "feet[0].signs.digitalPulse")
        .contains("4 faults in 2 files");
  }

  @Test
  void an_output_file_that_was_there_stays_as_it_was() {
    String wrong = Written.file(folder, "wrong.yaml", "feet: 3\n");
    String output = Written.file(folder, "advice.txt", "Hornbook advice: of yesterday");
    Program.run("assess", "--output", output, wrong).refused(65);
    assertThat(Path.of(output)).content().isEqualTo("Hornbook advice: of yesterday");
  }

  @Test
  void faults_of_settings_are_told_with_their_number() {
    String file = Written.file(folder, "plain.yaml", Written.PLAIN);
    Program.Run run =
        Program.run("assess", "--set", "horse.name=Ivy", "--set", "feet[0].limp=1", file);
    assertThat(run.refused(65).err()).contains("--set number 2", "feet[0].limp");
    assertThat(Program.run("assess", "--set", "nonsense", file).refused(65).err())
        .contains("--set number 1", "\"nonsense\"", "path=value");
  }

  @Test
  void control_characters_of_a_file_never_reach_the_terminal() {
    String file =
        Written.file(folder, "wrong.yaml", Written.PLAIN.replace("normal", "\"\\e[2Jred\""));
    assertThat(Program.run("assess", file).refused(65).err()).doesNotContain("\u001b");
  }

  @Test
  void a_file_that_is_not_there() {
    Written.file(folder, "tansy.yaml", Written.PLAIN);
    String near = folder.resolve("tansi.yaml").toString();
    assertThat(Program.run("assess", near).refused(66).err())
        .contains("there is no file " + near, "nearest: " + folder.resolve("tansy.yaml"));
    String far = folder.resolve("no/such/folder/x.yaml").toString();
    assertThat(Program.run("assess", far).refused(66).err()).contains("there is no folder");
  }

  @Test
  void a_folder_is_not_a_file() {
    String file = Written.file(folder, "tansy.yaml", Written.PLAIN);
    assertThat(Program.run("assess", folder.toString()).refused(66).err())
        .contains("is a folder", file);
  }

  @Test
  void a_missing_file_among_others_is_told_with_the_faults_of_the_others() {
    String wrong = Written.file(folder, "wrong.yaml", "feet: 3\n");
    String missing = folder.resolve("missing.yaml").toString();
    assertThat(Program.run("assess", wrong, missing).refused(66).err())
        .contains("there is no file " + missing, wrong + ":1:");
  }
}
