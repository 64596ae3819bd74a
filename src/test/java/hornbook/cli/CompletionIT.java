package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script for the shell, tried in bash. */
class CompletionIT {
  private static final Path SCRIPT = Program.HOME.resolve("completion/_hornbook");

  @TempDir Path folder;

  @Test
  void the_script_that_is_shipped_is_the_one_that_is_written() {
    assertThat(SCRIPT).hasContent(Program.run("completion").done().out());
  }

  @Test
  void bash_completes_commands_options_and_their_words() {
    List<List<String>> all =
        completed(
            List.of("hornbook", "ass"),
            List.of("hornbook", "rules", "sh"),
            List.of("hornbook", "assess", "--fail"),
            List.of("hornbook", "assess", "--units", "in"),
            List.of("hornbook", "assess", "--format", "=", "h"),
            List.of("hornbook", "assess", "--format", "="),
            List.of("hornbook", "assess", "--format=h"),
            List.of("hornbook", "nonsense", ""));
    assertThat(all.get(0)).containsExactly("assess");
    assertThat(all.get(1)).containsExactly("show");
    assertThat(all.get(2)).containsExactly("--fail-on");
    assertThat(all.get(3)).containsExactly("inch");
    assertThat(all.get(4)).containsExactly("html");
    assertThat(all.get(5)).contains("text", "json", "html", "pdf");
    assertThat(all.get(6)).containsExactly("--format=html");
    assertThat(all.get(7)).contains("assess", "rules").doesNotContain("html");
  }

  @Test
  void bash_completes_what_the_rule_base_knows() {
    List<List<String>> all =
        completed(
            List.of("hornbook", "plan", "x.yaml", "--technique", "glue"),
            List.of("hornbook", "plan", "x.yaml", "--technique", "=", "nail-on-"),
            List.of("hornbook", "plan", "x.yaml", "--support", "heart"),
            List.of("hornbook", "why", "x.yaml", "low-h"),
            List.of("hornbook", "why", "--foot", "left-fore", "x.yaml", "N00"),
            List.of("hornbook", "rules", "show", "N003"),
            List.of("hornbook", "rules", "show", "glue-o"),
            List.of("hornbook", "rules", "list", "--topic", "nail"),
            List.of("hornbook", "rules", "list", "nail"),
            List.of("hornbook", "record", "add", "x.yaml", "--chose", "cast"),
            List.of("hornbook", "exercise", "show", "showjumper-t"),
            List.of("hornbook", "glossary", "thr"),
            List.of("hornbook", "help", "gloss"),
            List.of("hornbook", "contrast", "x.yaml", "--to", "rolled"));
    List<String> single =
        List.of(
            "glue-on",
            "nail-on-adapted",
            "heart-bar",
            "low-heels",
            "",
            "N003",
            "glue-on",
            "nailing",
            "",
            "cast-wrap",
            "showjumper-torn-side",
            "thrush",
            "glossary",
            "rolled-toe");
    for (int at = 0; at < single.size(); at++) {
      if (!single.get(at).isEmpty()) {
        assertThat(all.get(at)).as("number %d", at).containsExactly(single.get(at));
      }
    }
    assertThat(all.get(4)).contains("N001", "N003").allMatch(one -> one.startsWith("N00"));
    assertThat(all.get(8)).contains("nailing", "nailable");
  }

  @Test
  void bash_completes_files_and_folders() throws IOException {
    Files.createFile(folder.resolve("tansy one.yaml"));
    Files.createDirectory(folder.resolve("tall"));
    List<List<String>> all =
        completed(
            List.of("hornbook", "assess", "ta"),
            List.of("hornbook", "assess", "other.yaml", "ta"),
            List.of("hornbook", "assess", "-o", "ta"),
            List.of("hornbook", "assess", "--rules", "ta"),
            List.of("hornbook", "why", "x.yaml", "glue-on", "ta"),
            List.of("hornbook", "critique", "ta"));
    assertThat(all.get(0)).containsExactlyInAnyOrder("tall", "tansy one.yaml");
    assertThat(all.get(1)).isEqualTo(all.get(0));
    assertThat(all.get(2)).isEqualTo(all.get(0));
    assertThat(all.get(3)).containsExactly("tall");
    assertThat(all.get(4)).isEmpty();
    assertThat(all.get(5)).contains("tansy one.yaml");
  }

  @Test
  void bash_is_left_with_one_function_and_no_variable() {
    String line =
        "a=$(compgen -v; declare -F); source '"
            + SCRIPT
            + "'; b=$(compgen -v; declare -F);"
            + " diff <(printf '%s\\n' \"$a\" | sort) <(printf '%s\\n' \"$b\" | sort) | grep '^[<>]';"
            + " COMP_WORDS=(hornbook assess --format=h); COMP_CWORD=2; _hornbook;"
            + " c=$(compgen -v; declare -F);"
            + " diff <(printf '%s\\n' \"$b\" | sort) <(printf '%s\\n' \"$c\" | sort) | grep '^[<>]'";
    List<String> left =
        Program.here().command(List.of("bash", "--norc", "-c", line)).out().lines().toList();
    assertThat(left)
        .contains("> declare -f _hornbook")
        .allMatch(
            one ->
                one.matches(
                    "> (declare -f _hornbook|a|b|PIPESTATUS|COMP_WORDS|COMP_CWORD|COMPREPLY)"));
  }

  /** The candidates for each line of words, the last of which is being typed; one shell for all. */
  @SafeVarargs
  private List<List<String>> completed(List<String>... lines) {
    StringBuilder script = new StringBuilder("source '" + SCRIPT + "'\ncompopt() { :; }\n");
    for (List<String> words : lines) {
      script.append("COMP_WORDS=(");
      words.forEach(word -> script.append("'").append(word).append("' "));
      script.append(")\nCOMP_CWORD=").append(words.size() - 1).append("\n_hornbook\n");
      script.append("printf '%s\\n' \"${COMPREPLY[@]}\" END\n");
    }
    String out =
        Program.here()
            .from(folder)
            .command(List.of("bash", "--norc", "-c", script.toString()))
            .done()
            .out();
    List<List<String>> all = new ArrayList<>(List.of(new ArrayList<>()));
    for (String one : out.lines().toList()) {
      if (one.equals("END")) {
        all.add(new ArrayList<>());
      } else if (!one.isEmpty()) {
        all.get(all.size() - 1).add(one);
      }
    }
    return all.subList(0, all.size() - 1);
  }
}
