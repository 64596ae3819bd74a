package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The handbook as the packaged program writes it. */
class HandbookIT {
  @TempDir private Path folder;
  @TempDir private Path cache;

  private Program program() {
    return Program.here().from(folder).environment("XDG_CACHE_HOME", cache.toString());
  }

  @Test
  void it_goes_to_a_file_as_a_page() throws IOException {
    assertThat(program().with("rules", "handbook", "-o", "book.html").done().out()).isEmpty();
    assertThat(Files.readString(folder.resolve("book.html")))
        .startsWith("<!DOCTYPE html>")
        .contains("id=\"N003\"", "@page", "Example case", "Near-miss")
        .endsWith("</html>\n");
  }

  @Test
  void own_rules_have_their_chapter_and_their_case_in_markdown_too() {
    program().with("rules", "new", "our-yard", "--dir", "own").done();
    String[] ours = {
      "rules", "handbook", "--rules", "own", "--trust-rules", "--format", "markdown"
    };
    assertThat(program().with(ours).done().out())
        .startsWith("# Hornbook: ")
        .contains("<a id=\"N003\">", "**Example case**", "**Near-miss**")
        .contains(" with Own rules 0.1.0", "](#topic-our-yard)", "<a id=\"Y001\">")
        .contains("Last done 60 days ago; we let no foot go longer than 56 days.")
        .contains("Days since shoeing: 56, in place of 60.")
        .contains("<a id=\"limit-our-yard.y001.days\">");
  }
}
