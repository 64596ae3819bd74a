package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is written as JSON says which format it is, on the first line a program reads. */
class JsonFormatsIT {
  private static final String TORN = exercise("showjumper-torn-side");

  @ParameterizedTest
  @CsvSource({
    "assess FILE, hornbook-advice/1",
    "assess FILE --for vet, hornbook-paper/1",
    "plan FILE --technique glue-on, hornbook-plan/1",
    "why FILE glue-on, hornbook-why/1",
    "contrast FILE --most 1, hornbook-contrast/1",
    "confidence FILE --runs 5, hornbook-confidence/1",
    "exercise list, hornbook-exercises/1",
    "rules list, hornbook-rules/1",
    "rules list thrush, hornbook-rules/1",
    "rules show N003, hornbook-rules-entry/1",
    "rules show glue-on, hornbook-rules-entry/1",
    "rules show low-heels, hornbook-rules-entry/1",
    "rules show nails.branch.least, hornbook-rules-entry/1",
    "rules show lungwitz-1913, hornbook-rules-entry/1",
    "rules show poultice, hornbook-rules-entry/1",
    "glossary hairline, hornbook-glossary/1",
    "glossary, hornbook-glossary/1"
  })
  void the_format_comes_first(String command, String format) {
    String[] words = (command.replace("FILE", TORN) + " --format json").split(" ");
    JsonNode json = Program.run(words).done().json();
    assertThat(json.fieldNames().next()).isEqualTo("format");
    assertThat(json.path("format").asText()).isEqualTo(format);
  }

  @Test
  void a_book_has_its_formats_too(@TempDir Path folder) {
    String book = folder.resolve("book").toString();
    Program.run("record", "add", TORN, "--chose", "glue-on", "--book", book).ended(0);
    for (String command : new String[] {"list", "show 1", "verify", "export 1 --for owner"}) {
      String[] words = ("record " + command + " --format json --book " + book).split(" ");
      assertThat(Program.run(words).done().json().path("format").asText()).startsWith("hornbook-");
    }
  }
}
