package hornbook.rulebook.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule that is begun in a whole rule base belongs to the version that is to come. */
class RuleStarterTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);
  private static final String FIRST =
      "# What changed.\n- version: 1.0.0\n  date: 2026-01-01\n  says: [begun]\n  rules: []\n";

  @TempDir private Path folder;

  @Test
  void the_first_new_rule_raises_the_version() throws IOException {
    Map<String, String> files = begun("1.0.0", FIRST);
    assertThat(files.get("rulebook.yaml")).contains("version: 1.1.0");
    assertThat(files.get("shape/heels.drl"))
        .startsWith("// there\n")
        .contains("@id(S008)", "@topic(shape)", "@since(1.1.0)");
    assertThat(files.get("changes.yaml"))
        .startsWith("# What changed.\n- version: 1.1.0\n  date: 2026-03-14\n")
        .contains("  rules: [S008]\n  limits: [shape.s008.days]\n- version: 1.0.0");
    assertThat(files).containsKey("../cases/rules/S008.yaml");
  }

  @Test
  void the_next_joins_the_version_that_is_begun() throws IOException {
    String begun =
        FIRST.replace(
            "- version",
            "- version: 1.1.0\n  date: 2026-02-01\n  says: [more]\n  rules: [S007]\n"
                + "  limits: []\n- version");
    Map<String, String> files = begun("1.1.0", begun);
    assertThat(files.get("rulebook.yaml")).contains("version: 1.1.0");
    assertThat(files.get("changes.yaml"))
        .isEqualTo(
            begun
                .replace("[S007]", "[S007, S008]")
                .replace("limits: []", "limits: [shape.s008.days]"));
  }

  @Test
  void a_rule_is_begun_on_any_measure_of_the_foot() throws IOException {
    for (String measure : RuleStarter.measures()) {
      Map<String, String> files =
          new RuleStarter(folder, "our-yard", null, null, measure).files(TODAY);
      assertThat(files.get("our-yard/y001.drl")).contains("what == \"" + measure + "\"");
      assertThat(files.get("cases/rules/Y001.yaml")).contains("measures: {" + measure + ": ");
    }
    assertThat(RuleStarter.measures()).contains("toeLength", "toeAngle").hasSizeGreaterThan(15);
  }

  private Map<String, String> begun(String version, String changes) throws IOException {
    Files.createDirectories(folder.resolve("shape"));
    Files.writeString(
        folder.resolve("rulebook.yaml"),
        "version: " + version + "\ntopics:\n  shape: {letter: S, title: Shape}\n");
    Files.writeString(folder.resolve("changes.yaml"), changes);
    Files.writeString(folder.resolve("shape/heels.drl"), "// there\n");
    Files.writeString(folder.resolve("shape/size.drl"), "@id(S007)\n");
    return new RuleStarter(folder, "shape", "Too long", "heels", null).files(TODAY);
  }
}
