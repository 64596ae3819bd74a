package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A command line that is not in order ends with 2 and the nearest that would be. */
class UsageIT {
  private static final String FOAL = exercise("foal-trim");

  static Stream<Arguments> misuse() {
    return Stream.of(
        misuse("there is no option \"--formt\"", "nearest: --format", "assess", "--formt", "x"),
        misuse("there is no option \"--unit\"", "nearest: --units", "assess", "--unit=mm", FOAL),
        misuse("there is no command \"asses\"", "nearest: assess", "asses", FOAL),
        misuse("there is no command", "to assess that file: hornbook assess " + FOAL, FOAL),
        misuse("hornbook assess needs FILE", "hornbook assess --help", "assess"),
        misuse("--format cannot be \"jsn\"", "nearest: json", "assess", "--format", "jsn", FOAL),
        misuse("--units cannot be \"feet\"", "mm, inch", "assess", "--units", "feet", FOAL),
        misuse("--fail-on cannot be", "now, today, days", "assess", "--fail-on", "soon", FOAL),
        misuse("--output needs FILE", "help:", "assess", FOAL, "--output"),
        misuse("--units is given twice", "help:", "assess", "--units=mm", "--units=mm", FOAL),
        misuse("--brief and --full", "one of them", "assess", "--brief", "--full", FOAL),
        misuse("read only once", "give - once", "assess", "-", "-"),
        misuse("--output " + FOAL, "another file", "assess", "--output", FOAL, FOAL),
        misuse("hornbook rules show needs ID", "rules show --help", "rules", "show"),
        misuse("\"N004\" is one argument too many", "help:", "rules", "show", "N003", "N004"),
        misuse("nothing named \"N03\"", "nearest: N003", "rules", "show", "N03"),
        misuse("\"nailing\" is a topic", "--topic nailing", "rules", "show", "nailing"),
        misuse("no topic \"nalling\"", "nearest: nailing", "rules", "list", "--topic", "nalling"),
        misuse("no command \"lst\"", "nearest: list", "rules", "lst"),
        misuse("no command \"polish\"", "hornbook --help", "help", "polish"),
        misuse("no command \"polish\"", "hornbook --help", "polish", "--help"),
        misuse("no command \"sow\"", "nearest: show", "rules", "sow", "--help"),
        misuse("--limb cannot be \"left\"", "left-fore", "new", "--limb", "left"));
  }

  private static Arguments misuse(String what, String then, String... command) {
    return Arguments.of(what, then, List.of(command));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("misuse")
  void is_told_with_what_would_be_right(String what, String then, List<String> command) {
    Program.Run run = Program.run(command.toArray(String[]::new)).refused(2);
    assertThat(run.err()).startsWith("hornbook: ").contains(what, then);
  }

  @Test
  void nothing_asked_for_is_answered_with_the_help() {
    assertThat(Program.run().refused(2).err()).contains("Examples:", "Commands:");
    assertThat(Program.run("rules").refused(2).err()).contains("Examples:", "list", "show");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void every_command_has_help_with_examples_first(List<String> command) {
    String help = Program.once(and(command, "--help")).done().out();
    assertThat(help).containsSubsequence("Examples:", "Usage: hornbook", "--help");
    String[] named = Stream.concat(Stream.of("help"), command.stream()).toArray(String[]::new);
    assertThat(Program.run(named).done().out()).isEqualTo(help);
    assertThat(help.lines()).allMatch(line -> line.length() <= 80);
    assertThat(help)
        .as("examples are whole lines")
        .doesNotContainPattern("(?m)^  hornbook.*\\n\\S");
  }

  /** The program itself, every command its help lists, and every command listed under those. */
  static Stream<List<String>> commands() {
    List<List<String>> commands = new ArrayList<>();
    add(List.of(), commands);
    assertThat(commands).hasSizeGreaterThan(6).contains(List.of("rules", "show"));
    return commands.stream();
  }

  private static void add(List<String> command, List<List<String>> to) {
    to.add(command);
    String help = Program.once(and(command, "--help")).done().out();
    int listed = help.indexOf("\nCommands:\n");
    if (listed >= 0) {
      help.substring(listed)
          .lines()
          .skip(2)
          .takeWhile(line -> !line.isBlank())
          .filter(line -> line.matches("  \\S.*"))
          .map(line -> line.strip().split(" ")[0])
          .filter(name -> !name.equals("help"))
          .forEach(name -> add(List.of(and(command, name)), to));
    }
  }

  private static String[] and(List<String> command, String more) {
    return Stream.concat(command.stream(), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void the_version_is_that_of_program_and_rules() {
    assertThat(Program.run("--version").done().out())
        .matches("hornbook \\d+\\.\\d+\\.\\d+\nrule base \\d+\\.\\d+\\.\\d+ sha256:[0-9a-f]{64}\n");
  }
}
