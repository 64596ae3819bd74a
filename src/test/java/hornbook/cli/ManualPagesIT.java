package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The manual pages that are shipped. */
class ManualPagesIT {
  private static final Path PAGES = Program.HOME.resolve("man/man1");
  private static final Pattern OPTION = Pattern.compile("(?m)^ +(?:-\\w, +)?(--[a-z-]+)");

  @Test
  void every_command_has_a_page_and_no_page_has_none() throws IOException {
    List<String> names = new ArrayList<>(List.of("hornbook.1"));
    for (String command : commands(Program.run("--help").done().out())) {
      names.add("hornbook-" + command + ".1");
      if (List.of("exercise", "record", "rules").contains(command)) {
        commands(Program.run(command, "--help").done().out())
            .forEach(below -> names.add("hornbook-" + command + "-" + below + ".1"));
      }
    }
    try (Stream<Path> files = Files.list(PAGES)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(names);
    }
  }

  @Test
  void a_page_tells_what_the_help_tells() throws IOException {
    for (String command : List.of("assess", "plan", "rules show")) {
      String help = Program.run((command + " --help").split(" ")).done().out();
      String page = Files.readString(PAGES.resolve("hornbook-" + command.replace(' ', '-') + ".1"));
      String plain = page.replace("\\-", "-");
      assertThat(page)
          .containsSubsequence(
              ".TH \"HORNBOOK",
              ".SH \"NAME\"",
              ".SH \"SYNOPSIS\"",
              ".SH \"OPTIONS\"",
              ".SH \"EXAMPLES\"");
      assertThat(OPTION.matcher(help).results().map(found -> found.group(1)).toList())
          .hasSizeGreaterThan(4)
          .allMatch(plain::contains);
      assertThat(plain).contains(help.lines().findFirst().orElseThrow().replaceAll("\\.$", ""));
    }
  }

  private static List<String> commands(String help) {
    return help.substring(help.indexOf("\nCommands:\n"))
        .lines()
        .skip(2)
        .takeWhile(line -> !line.isBlank())
        .filter(line -> line.matches("  \\S.*"))
        .map(line -> line.strip().split(" ")[0])
        .toList();
  }
}
