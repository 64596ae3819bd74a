package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.cli.base.ShippedWithProgram;
import hornbook.cli.base.Surroundings;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** No command that writes HTML is left out of the checks in a browser. */
class HtmlPagesTest {
  private static CommandLine program() {
    return Commands.whole(Surroundings.silent(null, new ShippedWithProgram()));
  }

  private static void collect(CommandLine command, String name, Set<String> writers) {
    OptionSpec format = command.getCommandSpec().findOption("--format");
    if (format != null
        && format.completionCandidates() != null
        && StreamSupport.stream(format.completionCandidates().spliterator(), false)
            .anyMatch("html"::equals)) {
      writers.add(name);
    }
    command
        .getSubcommands()
        .forEach((word, below) -> collect(below, (name + " " + word).strip(), writers));
  }

  @Test
  void every_command_that_writes_html_has_a_page_in_the_list() {
    Set<String> writers = new TreeSet<>();
    collect(program(), "", writers);
    assertThat(writers).contains("assess", "record show", "rules handbook", "mark");
    Path nowhere = Path.of("nowhere");
    List<String> listed =
        HtmlPages.all(nowhere, nowhere).stream()
            .map(page -> String.join(" ", page.command()) + " ")
            .toList();
    for (String writer : writers) {
      assertThat(listed).anyMatch(page -> page.startsWith(writer + " "));
    }
  }
}
