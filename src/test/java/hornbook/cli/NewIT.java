package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The blank that is to be filled in. */
class NewIT {
  @TempDir Path folder;

  @Test
  void a_blank_is_an_assessment_of_which_nothing_is_known_yet() {
    Path blank = folder.resolve("blank.yaml");
    Program.run("new", "--limb", "left-fore", "--output", blank.toString()).done();
    JsonNode foot =
        Program.run("assess", "--format", "json", blank.toString())
            .done()
            .json()
            .path("feet")
            .path(0);
    assertThat(foot.path("limb").asText()).isEqualTo("left-fore");
    assertThat(foot.path("provisional").asBoolean()).isTrue();
    assertThat(foot.path("questions")).isNotEmpty();
  }

  @Test
  void every_foot_asked_for_is_in_it_once() {
    String blank =
        Program.run("new", "--limb", "left-hind", "--limb", "right-fore", "--limb", "left-hind")
            .done()
            .out();
    assertThat(blank).containsOnlyOnce("limb: left-hind").containsOnlyOnce("limb: right-fore");
    JsonNode advice =
        Program.here().input(blank).with("assess", "--format", "json", "-").done().json();
    assertThat(advice.path("feet").findValuesAsText("limb"))
        .containsExactly("left-hind", "right-fore");
  }

  @Test
  void a_foot_that_was_not_named_has_to_be() {
    String blank = Program.run("new").done().out();
    assertThat(Program.here().input(blank).with("assess", "-").refused(65).err())
        .contains("feet[0].limb");
  }

  @Test
  void examples_stand_in_the_units_asked_for() {
    assertThat(Program.run("new", "--units", "inch").done().out()).contains(" in").contains(" lb");
  }

  @Test
  void what_was_filled_in_already_is_never_written_over() {
    String filled = Written.file(folder, "tansy.yaml", Written.PLAIN);
    assertThat(Program.run("new", "--output", filled).refused(74).err())
        .contains("there is such a file already");
    assertThat(Path.of(filled)).content().isEqualTo(Written.PLAIN);
  }
}
