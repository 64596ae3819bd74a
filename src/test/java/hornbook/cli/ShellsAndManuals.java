package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What needs tools a machine may lack, and so runs with the pages: zsh completes what bash does,
 * and mandoc finds no fault in a manual page. Where a tool is missing the test fails.
 */
class ShellsAndManuals {
  private static final Path SCRIPT = Program.HOME.resolve("completion/_hornbook");

  @TempDir Path folder;

  /** In zsh the shell's own functions are replaced by ones that tell what they were given. */
  private static final String SHELL =
      """
      compdef() { print -r -- "defined $*" }
      compadd() { shift; print -rl -- "$@" }
      compset() { :; }
      _files() { print -r -- "files $*" }
      source '%s'
      words=(%s) CURRENT=%d
      _hornbook
      """;

  @ParameterizedTest
  @CsvSource({
    "hornbook ass, assess",
    "hornbook rules sh, show",
    "hornbook assess --fail, --fail-on",
    "hornbook assess --format=h, html",
    "hornbook assess --units in, inch",
    "hornbook plan x.yaml --technique glue, glue-on",
    "hornbook why x.yaml low, low-heels",
    "hornbook rules show N00, N003",
    "hornbook rules list --topic nail, nailing",
    "hornbook assess ta, 'files '",
    "hornbook assess --rules ta, files -/"
  })
  void zsh_completes_what_bash_does(String line, String expected) {
    String[] words = line.split(" ");
    String script = SHELL.formatted(SCRIPT, line.replace("=h", "\\=h"), words.length);
    Program.Run run = Program.here().command(List.of("zsh", "-f", "-c", script)).done();
    assertThat(run.out().lines()).contains("defined _hornbook hornbook", expected);
  }

  @Test
  void zsh_at_a_terminal_completes_a_line_and_keeps_one_function() throws Exception {
    Path start = folder.resolve("start");
    Files.writeString(
        start,
        "PS1='> '; autoload -Uz compinit; compinit -u -d '"
            + folder.resolve("dump")
            + "';"
            + " source '"
            + SCRIPT
            + "'; hornbook() { print -r -- \"ran $*\" };"
            + " print -r -- ${#${(M)${(k)functions}:#*hornbook_*}} others; print READY\n");
    try (Typist typist = Typist.of(folder, "zsh", "-f", "-i")) {
      typist.types("source '" + start + "'\r").sees("0 others").sees("READY");
      typist.types("hornbook asse\t--fail\ttod\t\r").sees("ran assess --fail-on today");
      typist.types("hornbook plan --technique=glu\t\r").sees("ran plan --technique=glue-on");
      typist.types("exit\r").endsWith(0);
    }
  }

  @Test
  void mandoc_finds_no_fault_in_a_page() throws IOException {
    try (Stream<Path> files = Files.list(Program.HOME.resolve("man/man1"))) {
      List<Path> pages = files.toList();
      assertThat(pages).hasSizeGreaterThan(30);
      for (Path page : pages) {
        Program.here()
            .command(List.of("mandoc", "-T", "lint", "-W", "warning", page.toString()))
            .done();
      }
    }
  }

  /** An example is copied as it stands: no shell may take a bracket of it for a pattern. */
  @Test
  void examples_survive_zsh() throws IOException {
    for (String line : Program.run("assess", "--help").done().out().lines().toList()) {
      if (line.startsWith("  hornbook") && !line.contains("*")) {
        String script = "hornbook() { print -r -- \"$@\" }; " + line.strip();
        Program.here().command(List.of("zsh", "-f", "-c", script)).done();
      }
    }
  }
}
