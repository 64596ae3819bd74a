package hornbook.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The prose of the pages beside the program, without their blocks of code and the code in them. */
class EveryDocumentTest {
  private static final Pattern CODE = Pattern.compile("(`[^`]*`[ ,;:]*)+");

  private static final Pattern BEGINS = Pattern.compile("^(#+|[-*]|\\d+\\.) (?=\\S)");

  private final Map<String, String> all = new TreeMap<>();

  private final StringBuilder paragraph = new StringBuilder();

  private String name;

  private int begun;

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "DEVELOPERS.md", "rules/README.md"})
  void isShortAndInWordsOfToday(String page) throws IOException {
    name = page;
    read(Files.readString(Path.of(page)));
    assertThat(all).hasSizeGreaterThan(40);
    assertThat(Wording.faults(all)).isEmpty();
  }

  private void read(String page) {
    boolean code = false;
    int line = 0;
    for (String text : page.lines().toList()) {
      line++;
      boolean fence = text.startsWith("```");
      code ^= fence;
      if (fence || code || text.isBlank() || text.startsWith("|")) {
        end();
        if (text.startsWith("|")) {
          cells(text, line);
        }
      } else {
        if (BEGINS.matcher(text).find()) {
          end();
        }
        begun = paragraph.isEmpty() ? line : begun;
        paragraph.append(BEGINS.matcher(text).replaceFirst("")).append(' ');
      }
    }
    end();
  }

  private void end() {
    if (!paragraph.isEmpty()) {
      put(begun, paragraph.toString());
      paragraph.setLength(0);
    }
  }

  private void cells(String row, int line) {
    for (String cell : row.split("\\|")) {
      put(line, cell);
    }
  }

  /** Cells of one row are sentences of their own. */
  private void put(int line, String text) {
    all.merge(
        name + " " + line, CODE.matcher(text).replaceAll("X "), (one, other) -> one + ". " + other);
  }
}
