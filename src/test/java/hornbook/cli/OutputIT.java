package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where results go, and what happens when they cannot. */
class OutputIT {
  private static final String FOAL = exercise("foal-trim");

  @TempDir Path folder;

  @Test
  void a_folder_that_is_not_there() {
    Path output = folder.resolve("no/advice.txt");
    assertThat(assessInto(output).refused(74).err())
        .contains("cannot write " + output, "there is no such folder");
    assertThat(output.getParent()).doesNotExist();
  }

  @Test
  void a_folder_in_place_of_a_file() {
    assertThat(assessInto(folder).refused(74).err()).contains("it is a folder");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_full_disk_in_place_of_the_screen() {
    Program.Run run =
        Program.here()
            .command(List.of("sh", "-c", launcher() + " assess '" + FOAL + "' > /dev/full"))
            .refused(74);
    assertThat(run.err()).contains("standard output cannot be written", "--output");
  }

  @Test
  void a_reader_that_has_seen_enough_is_no_failure() {
    String line = launcher() + " rules list | head -n 1";
    Program.Run run = Program.here().command(List.of("bash", "-o", "pipefail", "-c", line)).done();
    assertThat(run.out().lines()).hasSize(1);
    String closed = launcher() + " assess --fail-on mention '" + FOAL + "' | true";
    Program.here().command(List.of("bash", "-o", "pipefail", "-c", closed)).done();
  }

  @Test
  void a_link_that_leads_nowhere_yet_leads_to_the_result() throws IOException {
    Path target = folder.resolve("advice.txt");
    Path link = Files.createSymbolicLink(folder.resolve("latest.txt"), Path.of("advice.txt"));
    assessInto(link).done();
    assertThat(link).isSymbolicLink();
    assertThat(target).isRegularFile().isNotEmptyFile();
    Path ring = Files.createSymbolicLink(folder.resolve("ring"), Path.of("ring"));
    assertThat(assessInto(ring).refused(74).err()).contains("points back to itself");
  }

  @Test
  void a_file_keeps_its_permissions_and_a_link_stays_a_link() throws IOException {
    Path output =
        Files.writeString(folder.resolve("advice.txt"), "Hornbook advice: of yesterday\n");
    Set<PosixFilePermission> shared = PosixFilePermissions.fromString("rw-rw-r--");
    Files.setPosixFilePermissions(output, shared);
    Path link = Files.createSymbolicLink(folder.resolve("latest.txt"), output);
    assessInto(link).done();
    assertThat(link).isSymbolicLink();
    assertThat(output).content().contains("Pipit");
    assertThat(Files.getPosixFilePermissions(output)).isEqualTo(shared);
  }

  @Test
  void only_a_result_gives_way_to_a_result() throws IOException {
    Path own = Files.writeString(folder.resolve("own.yaml"), Written.PLAIN);
    Program.Run refused = assessInto(own).refused(74);
    assertThat(refused.err())
        .contains("cannot write " + own, "hornbook did not write it", "--force");
    assertThat(own).hasContent(Written.PLAIN);
    Program.run("assess", FOAL, "-o", own.toString(), "--force").done();
    assertThat(own).content().contains("Pipit");
    Path result = folder.resolve("result");
    for (String format : new String[] {"text", "json", "html", "markdown", "pdf", "text"}) {
      Program.run("assess", FOAL, "--format", format, "-o", result.toString()).done();
    }
    Program.run("plan", FOAL, "--technique", "leave-unshod", "-o", result.toString()).done();
    Path json = Files.writeString(folder.resolve("own.json"), JSON_ASSESSMENT);
    assertThat(assessInto(json).refused(74).err()).contains("hornbook did not write it");
    assertThat(Program.run("rules", "list", "-o", json.toString()).refused(74).err())
        .contains("--force");
  }

  private static final String JSON_ASSESSMENT =
      "{\"format\": \"hornbook-assessment/1\", \"feet\": [{\"limb\": \"left-fore\"}]}";

  @Test
  void a_link_into_no_folder_is_told_with_where_it_leads() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("latest"), Path.of("gone/away.txt"));
    assertThat(assessInto(link).refused(74).err())
        .contains("it is a link to gone/away.txt", "no such folder");
  }

  @Test
  void a_device_is_written_to_as_it_is() {
    assertThat(Program.run("assess", "--output", "/dev/stdout", FOAL).ended(0).out())
        .contains("Pipit");
    assessInto(Path.of("/dev/null")).done();
    assertThat(Path.of("/dev/null")).exists();
  }

  @Test
  void a_minus_is_the_screen() {
    assertThat(Program.run("assess", "--output", "-", FOAL).done().out()).contains("Pipit");
  }

  private static Program.Run assessInto(Path output) {
    return Program.run("assess", "--output", output.toString(), FOAL);
  }

  private static String launcher() {
    return "'" + Program.HOME.resolve("bin/hornbook") + "'";
  }

  /** A bell, a change of colour, a turn of the direction of writing. */
  @Test
  void what_would_play_with_the_screen_is_shown_by_its_number() throws IOException {
    String tricks = "a\u001b[31mb\u202ec\u0007d";
    String shown = "a\\u001b[31mb\\u202ec\\u0007d";
    Path there = Files.copy(Path.of(FOAL), folder.resolve(tricks + ".yaml"));
    for (Program.Run run :
        List.of(
            Program.run("assess", folder.resolve("no " + tricks).toString()).refused(66),
            Program.run("assess", there.toString(), FOAL, "--brief").done(),
            Program.run("assess", FOAL, "-o", folder + "/no/" + tricks).refused(74),
            Program.run("assess", FOAL, "--units", tricks).refused(2),
            Program.run("assess", FOAL, "--" + tricks).refused(2),
            Program.run(tricks).refused(2),
            Program.run("plan", FOAL, "--technique", "nail-on", "--despite", tricks).refused(2))) {
      assertThat(run.out() + run.err())
          .contains(shown)
          .doesNotContain("\u001b", "\u202e", "\u0007");
    }
  }
}
