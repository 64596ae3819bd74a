package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.cli.base.ShippedWithProgram;
import hornbook.cli.base.Surroundings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The help the build has written down is that of the command line library, for every command. */
class PreparedHelpIT {
  private static final Path HOME = Path.of(System.getProperty("hornbook.program"));

  private static void add(CommandLine command, List<CommandLine> all) {
    all.add(command);
    command.getSubcommands().values().forEach(below -> add(below, all));
  }

  @Test
  void every_command_has_its_help_letter_by_letter_and_none_has_two() throws IOException {
    List<CommandLine> all = new ArrayList<>();
    add(Commands.whole(Surroundings.silent(HOME, new ShippedWithProgram())), all);
    for (CommandLine command : all) {
      command.setUsageHelpWidth(80);
      String name = command.getCommandSpec().qualifiedName();
      assertThat(PreparedHelp.file(HOME, name)).hasContent(command.getUsageMessage(Ansi.OFF));
    }
    try (Stream<Path> files = Files.list(HOME.resolve("help"))) {
      assertThat(files.count()).isEqualTo(all.size());
    }
  }

  @Test
  void it_is_what_a_user_is_shown_and_what_the_library_shows_where_it_is_missing() {
    for (String command : List.of("", "assess", "exercise list", "rules show")) {
      List<String> words = new ArrayList<>(Arrays.asList(command.split(" ")));
      words.removeIf(String::isEmpty);
      words.add("--help");
      String shown = Program.run(words.toArray(String[]::new)).done().out();
      String name = command.isEmpty() ? "hornbook" : "hornbook " + command;
      assertThat(PreparedHelp.file(HOME, name)).hasContent(shown);
      words.add(0, "help");
      words.remove("--help");
      assertThat(Program.run(words.toArray(String[]::new)).done().out()).isEqualTo(shown);
    }
  }

  @Test
  void what_only_looks_like_a_command_is_refused_as_ever() {
    for (String wrong : List.of("assess ../assess", "asses", "--nonsense", "rules shown")) {
      List<String> words = new ArrayList<>(List.of(wrong.split(" ")));
      words.add("--help");
      assertThat(PreparedHelp.of(Surroundings.silent(HOME, null), words.toArray(String[]::new)))
          .isNull();
    }
  }
}
