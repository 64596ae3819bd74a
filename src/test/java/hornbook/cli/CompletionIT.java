package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script for the shell, tried in a shell. */
class CompletionIT {
  @Test
  void bash_completes_commands_options_and_words(@TempDir Path folder) {
    String script = Program.run("completion").done().out();
    String file = Written.file(folder, "completion", script);
    assertThat(completed(file, "hornbook", "ass")).containsExactly("assess");
    assertThat(completed(file, "hornbook", "rules", "sh")).containsExactly("show");
    assertThat(completed(file, "hornbook", "assess", "--fail")).containsExactly("--fail-on");
    assertThat(completed(file, "hornbook", "assess", "--units", "in")).containsExactly("inch");
    assertThat(completed(file, "hornbook", "exercise", ""))
        .contains("list", "sheet", "run", "make");
    assertThat(completed(file, "hornbook", "exercise", "sheet", "--cl")).containsExactly("--class");
    assertThat(completed(file, "hornbook", "mark", "--feed")).containsExactly("--feedback");
    assertThat(completed(file, "hornbook", "critique", "--format", "mark"))
        .containsExactly("markdown");
  }

  private static List<String> completed(String file, String... words) {
    String line =
        String.join(
            "\n",
            "source '" + file + "'",
            "compopt() { :; }",
            "COMP_WORDS=(" + String.join(" ", words) + ")",
            "COMP_CWORD=" + (words.length - 1),
            "_complete_hornbook",
            "printf '%s\\n' \"${COMPREPLY[@]}\"");
    return Program.here()
        .command(List.of("bash", "-c", line))
        .done()
        .out()
        .strip()
        .lines()
        .toList();
  }
}
