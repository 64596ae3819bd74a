package hornbook.cli.classroom;

import hornbook.assessment.Foot;
import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.InputFile;
import hornbook.study.exercise.AnswerReader;
import hornbook.study.exercise.AnswerTable;
import hornbook.study.exercise.BlankAnswer;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.LearnerAnswer;
import hornbook.study.exercise.Vocabulary;
import hornbook.study.marking.AnswerMarks;
import hornbook.study.marking.ClassMarks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Reads the answers of a class: files, folders of them, tables. One that cannot be read is told in
 * its row, and all others are marked.
 */
final class AnswerFiles {
  private static final String TABLE = ".csv";

  private final Exercise exercise;
  private final Vocabulary known;
  private final Surroundings surroundings;
  private final List<Foot> feet;

  AnswerFiles(Exercise exercise, Vocabulary known, Surroundings surroundings) {
    this.exercise = exercise;
    this.known = known;
    this.surroundings = surroundings;
    this.feet = exercise.assessment().feet();
  }

  List<ClassMarks.Row> marked(List<String> named, Function<LearnerAnswer, AnswerMarks> marker) {
    List<ClassMarks.Row> rows = new ArrayList<>();
    for (String file : files(named)) {
      byte[] bytes = InputFile.read(file, "hornbook exercise sheet CASE", surroundings);
      if (file.toLowerCase(java.util.Locale.ROOT).endsWith(TABLE)) {
        table(bytes, file, marker, rows);
      } else {
        List<Fault> faults = new ArrayList<>();
        LearnerAnswer answer = AnswerReader.read(bytes, InputFile.shown(file), known, feet, faults);
        boolean named2 = answer != null && answer.by() != null;
        rows.add(row(named2 ? answer.by() : stem(file), file, answer, faults, marker));
      }
    }
    return rows;
  }

  private void table(
      byte[] bytes,
      String file,
      Function<LearnerAnswer, AnswerMarks> marker,
      List<ClassMarks.Row> rows) {
    List<Fault> faults = new ArrayList<>();
    List<AnswerTable.Row> table =
        AnswerTable.read(bytes, file, known, feet, BlankAnswer.feet(exercise), faults);
    if (!faults.isEmpty()) {
      rows.add(row(stem(file), file, null, faults, marker));
    }
    for (AnswerTable.Row one : table) {
      rows.add(row(one.by(), file, one.answer(), new ArrayList<>(one.faults()), marker));
    }
  }

  private ClassMarks.Row row(
      String by,
      String file,
      LearnerAnswer answer,
      List<Fault> faults,
      Function<LearnerAnswer, AnswerMarks> marker) {
    boolean other =
        answer != null && answer.caseName() != null && !answer.caseName().equals(exercise.name());
    if (other) {
      String found = '"' + answer.caseName() + '"';
      faults.add(new Fault(file, 1, 1, "case", found, exercise.name(), null));
    }
    List<String> errors = faults.stream().map(Fault::message).toList();
    return new ClassMarks.Row(by, file, errors.isEmpty() ? marker.apply(answer) : null, errors);
  }

  private static String stem(String file) {
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /** Every file named, and those in the folders named, in the order of their names. */
  private List<String> files(List<String> named) {
    List<String> files = new ArrayList<>();
    for (String one : named) {
      try {
        Path path = Path.of(one);
        if (Files.isDirectory(path)) {
          try (Stream<Path> all = Files.list(path)) {
            all.map(Path::toString).filter(AnswerFiles::isAnswer).sorted().forEach(files::add);
          }
        } else {
          files.add(one);
        }
      } catch (InvalidPathException noName) {
        files.add(one);
      } catch (IOException unreadable) {
        throw Failure.of(ExitCode.NO_INPUT, "the folder " + one + " cannot be read");
      }
    }
    if (files.isEmpty()) {
      throw Failure.of(
          ExitCode.NO_INPUT,
          "there are no answers in " + String.join(", ", named),
          "answers end in .yaml, .yml, .json or .csv");
    }
    return files;
  }

  private static boolean isAnswer(String file) {
    return file.matches("(?i).*\\.(yaml|yml|json|csv)");
  }
}
