package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.AssessmentReader;
import hornbook.assessment.DigitalPulse;
import hornbook.assessment.Limb;
import hornbook.assessment.ReadResult;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The interview as it is held with the packaged program: by piped answers, and at a terminal. */
class InterviewIT {
  private static final Path HOME = Path.of(System.getProperty("hornbook.program")).toAbsolutePath();

  @TempDir Path folder;

  private record Run(int code, String out, String err) {}

  private Run run(String input, String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of(HOME.resolve("bin/hornbook").toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().put("HORNBOOK_ARCHIVE", "off");
    Path out = Files.createTempFile(folder, ".out", null);
    Path err = Files.createTempFile(folder, ".err", null);
    Process process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    try (OutputStream to = process.getOutputStream()) {
      to.write(input.getBytes(StandardCharsets.UTF_8));
    } catch (IOException unread) {
      assertThat(input).as("not all of it has to be read").isNotEmpty();
    }
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    Run run = new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    assertThat(run.out + run.err).doesNotContain("Exception", "at hornbook.", "org.jline");
    return run;
  }

  private Assessment written(String name) throws IOException {
    ReadResult read =
        AssessmentReader.read(Files.readAllBytes(folder.resolve(name)), name, List.of());
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return ((ReadResult.Good) read).assessment();
  }

  private void assertAssessed(String name, String word) throws Exception {
    Run run = run("", "assess", name);
    assertThat(run.code).as(run.err).isZero();
    assertThat(run.out).contains(word);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(one -> one.getFileName().toString())
          .filter(one -> !one.startsWith(".out") && !one.startsWith(".err"))
          .toList();
    }
  }

  @Test
  void piped_answers_are_kept_when_they_run_out_and_gone_on_with() throws Exception {
    Run first = run("left-fore\nTansy\n2026-03-14\n8\n", "new", "--ask", "tansy.yaml");
    assertThat(first.code).as(first.err).isZero();
    assertThat(first.out).isEmpty();
    assertThat(first.err)
        .contains("could still change", "hornbook new --ask tansy.yaml")
        .contains("hornbook assess tansy.yaml");
    assertThat(written("tansy.yaml").horse().name()).isEqualTo("Tansy");
    assertAssessed("tansy.yaml", "Tansy");

    Run second = run("\n".repeat(300), "new", "--ask", "tansy.yaml");
    assertThat(second.code).as(second.err).isZero();
    assertThat(second.err)
        .doesNotContain("HORSE: name", "which foot")
        .contains("LEFT FORE: digital pulse", "Nothing else to ask");
    assertThat(written("tansy.yaml").horse().ageYears()).isEqualTo(8);
    assertThat(files()).containsExactly("tansy.yaml");
  }

  @Test
  void an_answer_that_cannot_be_is_told_and_asked_for_again() throws Exception {
    String answers = "left-front\nleft-fore\nTansy\n14 March\n2026-03-14\neight\n8\n";
    Run run = run(answers, "new", "--ask", "tansy.yaml");
    assertThat(run.code).isZero();
    assertThat(run.err).contains("Not \"left-front\"", "Not \"14 March\"", "Not \"eight\"");
    Assessment tansy = written("tansy.yaml");
    assertThat(tansy.feet().get(0).limb()).isEqualTo(Limb.LEFT_FORE);
    assertThat(tansy.horse().ageYears()).isEqualTo(8);
  }

  @Test
  void on_standard_output_the_file_comes_whole_at_the_end() throws Exception {
    Run run = run("Tansy\nstop\n", "new", "--ask", "--limb", "left-hind", "--output", "-");
    assertThat(run.code).isZero();
    assertThat(AssessmentReader.read(run.out.getBytes(StandardCharsets.UTF_8), "-", List.of()))
        .isInstanceOf(ReadResult.Good.class);
    assertThat(run.out).contains("limb: left-hind", "name: \"Tansy\"");
    assertThat(files()).isEmpty();
  }

  @Test
  void without_a_name_the_file_is_named_after_the_foot_and_the_day() throws Exception {
    run("left-fore\nTansy\n", "new", "--ask");
    run("left-fore\nTeasel\n", "new", "--ask");
    assertThat(files())
        .hasSize(2)
        .allMatch(name -> name.matches("left-fore-\\d{4}-\\d\\d-\\d\\d(-2)?\\.yaml"));
  }

  @Test
  void nothing_is_asked_where_nothing_can_be_kept() throws Exception {
    Run nowhere = run("Tansy\n", "new", "--ask", "--limb", "left-fore", "none/tansy.yaml");
    assertThat(nowhere.code).isEqualTo(74);
    assertThat(nowhere.err).doesNotContain("HORSE: name").contains("no such folder");
    Files.writeString(folder.resolve("broken.yaml"), "format: hornbook-assessment/1\nfeet: 3\n");
    assertThat(run("", "new", "--ask", "broken.yaml").code).isEqualTo(65);
    Path whole = HOME.resolve("cases/exercises/foal-trim.yaml");
    Files.copy(whole, folder.resolve("case.yaml"));
    assertThat(run("", "new", "--ask", "case.yaml").code).isEqualTo(2);
    assertThat(folder.resolve("case.yaml")).hasSameTextualContentAs(whole);
    assertThat(run("", "new", "tansy.yaml").code).isEqualTo(2);
    assertThat(run("", "new", "--ask", "--limb", "left-fore", "-o", "case.yaml").code)
        .isEqualTo(74);
  }

  @Test
  void at_a_terminal_questions_are_helped_with_gone_back_on_and_broken_off() throws Exception {
    try (Typist typist = Typist.at(folder, "new", "--ask", "tansy.yaml")) {
      typist.asked("which foot, or feet").answers("1");
      typist.asked("HORSE: name").answers("Tansi");
      typist.asked("date of the visit").answers("<");
      typist.asked("HORSE: name").answers("?");
      typist.asked("In the file: horse.name").answers("Tansy");
      typist.asked("date of the visit").answers("2026-03-14");
      typist.asked("age in years").answers("8");
      typist.asked("Could make this the vet's case now").types("abc" + Typist.CTRL_C);
      typist.sees("All is kept").sees("hornbook new --ask tansy.yaml");
      typist.endsWith(0);
      assertThat(typist.screen()).doesNotContain("Exception", "WARNING", "org.jline");
    }
    assertThat(written("tansy.yaml").horse().name()).isEqualTo("Tansy");

    try (Typist typist = Typist.at(folder, "new", "--ask", "tansy.yaml")) {
      while (written("tansy.yaml").feet().get(0).signs().digitalPulse() == null) {
        typist.sees("> ");
        boolean pulse = typist.lastQuestion().contains("digital pulse");
        typist.answers(pulse ? "bouX\u007f" : "");
      }
      typist.types(Typist.CTRL_D).sees("All is kept");
      typist.endsWith(0);
    }
    Assessment tansy = written("tansy.yaml");
    assertThat(tansy.feet().get(0).signs().digitalPulse()).isEqualTo(DigitalPulse.BOUNDING);
    assertThat(tansy.horse().name()).isEqualTo("Tansy");
    assertAssessed("tansy.yaml", "Tansy");
    assertThat(files()).containsExactly("tansy.yaml");
  }

  @Test
  void killed_in_the_middle_it_has_kept_every_answer() throws Exception {
    try (Typist typist = Typist.at(folder, "new", "--ask", "tansy.yaml")) {
      typist.asked("which foot, or feet").answers("left-fore");
      typist.asked("HORSE: name").answers("Tansy");
      typist.asked("date of the visit");
    }
    assertThat(written("tansy.yaml").horse().name()).isEqualTo("Tansy");
  }
}
