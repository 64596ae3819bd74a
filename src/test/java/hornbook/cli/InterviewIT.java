package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.word.DigitalPulse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The interview as it is held with the packaged program: by piped answers, and at a terminal. */
class InterviewIT {
  @TempDir Path folder;

  private Program.Run run(String input, String... arguments) {
    Program.Run run = Program.here().from(folder).input(input).with(arguments);
    assertThat(run.out() + run.err()).doesNotContain("Exception", "at hornbook.", "org.jline");
    return run;
  }

  private Assessment written(String name) throws IOException {
    ReadResult read =
        AssessmentReader.read(Files.readAllBytes(folder.resolve(name)), name, List.of());
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return ((ReadResult.Good) read).assessment();
  }

  private void assertAssessed(String name, String word) throws Exception {
    Program.Run run = run("", "assess", name);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out()).contains(word);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(one -> one.getFileName().toString()).toList();
    }
  }

  @Test
  void piped_answers_are_kept_when_they_run_out_and_gone_on_with() throws Exception {
    Program.Run first = run("left-fore\nTansy\n2026-03-14\n8\n", "new", "--ask", "tansy.yaml");
    assertThat(first.code()).as(first.err()).isZero();
    assertThat(first.out()).isEmpty();
    assertThat(first.err())
        .contains("could still change", "hornbook new --ask tansy.yaml")
        .contains("hornbook assess tansy.yaml");
    assertThat(written("tansy.yaml").horse().name()).isEqualTo("Tansy");
    assertAssessed("tansy.yaml", "Tansy");

    Program.Run second = run("\n".repeat(300), "new", "--ask", "tansy.yaml");
    assertThat(second.code()).as(second.err()).isZero();
    assertThat(second.err())
        .doesNotContain("HORSE: name", "which foot")
        .contains("LEFT FORE: digital pulse", "Nothing else to ask");
    assertThat(written("tansy.yaml").horse().ageYears()).isEqualTo(8);
    assertThat(files()).containsExactly("tansy.yaml");
  }

  @Test
  void an_answer_that_cannot_be_is_told_and_asked_for_again() throws Exception {
    String answers = "left-frore\nleft-fore\nTansy\n14 March\n2026-03-14\neight\n8\n";
    Program.Run run = run(answers, "new", "--ask", "tansy.yaml");
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("Not \"left-frore\"", "Not \"14 March\"", "Not \"eight\"");
    Assessment tansy = written("tansy.yaml");
    assertThat(tansy.feet().get(0).limb()).isEqualTo(Limb.LEFT_FORE);
    assertThat(tansy.horse().ageYears()).isEqualTo(8);
  }

  @Test
  void on_standard_output_the_file_comes_whole_at_the_end() throws Exception {
    Program.Run run = run("Tansy\nstop\n", "new", "--ask", "--limb", "left-hind", "--output", "-");
    assertThat(run.code()).isZero();
    assertThat(AssessmentReader.read(run.out().getBytes(StandardCharsets.UTF_8), "-", List.of()))
        .isInstanceOf(ReadResult.Good.class);
    assertThat(run.out()).contains("limb: left-hind", "name: \"Tansy\"");
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
    Program.Run nowhere = run("Tansy\n", "new", "--ask", "--limb", "left-fore", "none/tansy.yaml");
    assertThat(nowhere.code()).isEqualTo(74);
    assertThat(nowhere.err()).doesNotContain("HORSE: name").contains("no such folder");
    Files.writeString(folder.resolve("broken.yaml"), "format: hornbook-assessment/1\nfeet: 3\n");
    assertThat(run("", "new", "--ask", "broken.yaml").code()).isEqualTo(65);
    Path whole = Program.EXERCISES.resolve("foal-trim.yaml");
    Files.copy(whole, folder.resolve("case.yaml"));
    assertThat(run("", "new", "--ask", "case.yaml").code()).isEqualTo(2);
    assertThat(folder.resolve("case.yaml")).hasSameTextualContentAs(whole);
    assertThat(run("", "new", "tansy.yaml").code()).isEqualTo(2);
    assertThat(run("", "new", "--ask", "--limb", "left-fore", "-o", "case.yaml").code())
        .isEqualTo(74);
  }

  @Test
  void comments_of_ones_own_are_not_written_over() throws Exception {
    run("left-fore\nTansy\n", "new", "--ask", "tansy.yaml");
    Path file = folder.resolve("tansy.yaml");
    String noted = Files.readString(file).replace("name:", "# Kicks on the near side\n  name:");
    Files.writeString(file, noted);
    assertThat(run("8\n", "new", "--ask", "tansy.yaml").refused(2).err())
        .contains("has comments of your own (Kicks on the near side)", "--output FILE");
    assertThat(file).hasContent(noted);
    assertThat(run("stop\n", "new", "--ask", "tansy.yaml", "-o", "on.yaml").code()).isZero();
    assertThat(written("on.yaml").horse().name()).isEqualTo("Tansy");
  }

  @Test
  void a_file_written_in_other_units_or_blank_is_gone_on_with() throws Exception {
    run("", "new", "--limb", "left-fore", "--units", "inch", "-o", "tansy.yaml");
    assertThat(run("Tansy\nstop\n", "new", "--ask", "tansy.yaml").code()).isZero();
    assertThat(run("stop\n", "new", "--ask", "tansy.yaml", "--units", "inch").code()).isZero();
    assertThat(run("stop\n", "new", "--ask", "tansy.yaml").code()).isZero();
    assertThat(written("tansy.yaml").horse().name()).isEqualTo("Tansy");
  }

  @Test
  void an_interview_is_held_to_a_local_practice() throws Exception {
    Files.writeString(
        folder.resolve("yard.yaml"),
        """
        format: hornbook-practice/1
        name: Upper Yard
        by: the head farrier
        date: 2026-03-14
        limits:
          - {id: nails.branch.least, value: 3, reason: "on our stones two nails tear out"}
        """);
    assertThat(run("stop\n", "new", "--ask", "--practice", "yard.yaml").err())
        .contains("Local practice: Upper Yard, the head farrier.");
    assertThat(run("", "new", "--practice", "yard.yaml").refused(2).err()).contains("--ask");
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
      typist.asked("Could mean a vet now").types("abc" + Typist.CTRL_C);
      typist.sees("Every answer is saved").sees("hornbook new --ask tansy.yaml");
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
      typist.sees("> ").types(Typist.CTRL_D).sees("Every answer is saved");
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
