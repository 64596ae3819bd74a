package hornbook.cli.classroom;

import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.FaultsFound;
import hornbook.cli.file.InputFile;
import hornbook.cli.file.RulesFolder;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.ExerciseLibrary;
import hornbook.study.exercise.ExerciseReader;
import hornbook.study.exercise.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The teaching cases: those that come with the program, or a folder of one's own. */
final class TeachingCases {
  private static final String HINT = "how a case is written: cases/README.md";

  private final ArgumentValue<String> library;

  TeachingCases(Arguments arguments) {
    library = arguments.text("DIR", "cases of your own instead of the program's own", "--library");
  }

  private Path folder(Surroundings surroundings) {
    if (library.value() != null) {
      return RulesFolder.of(library.value());
    }
    return RulesFolder.shipped(surroundings).resolveSibling("cases").resolve("exercises");
  }

  private List<String> names(Surroundings surroundings) {
    try {
      List<String> names = ExerciseLibrary.names(folder(surroundings));
      if (names.isEmpty()) {
        throw Failure.of(ExitCode.NO_INPUT, "there are no cases in " + folder(surroundings));
      }
      return names;
    } catch (IOException unreadable) {
      throw unreadable(surroundings);
    }
  }

  private Failure unreadable(Surroundings surroundings) {
    return Failure.of(
        ExitCode.NO_INPUT, "the cases in " + folder(surroundings) + " cannot be read");
  }

  /** Every case, without a fault. */
  List<Exercise> all(Vocabulary known, Surroundings surroundings) {
    names(surroundings);
    try {
      ExerciseLibrary read = ExerciseLibrary.read(folder(surroundings), known);
      stopIfAny(read.faults());
      return List.copyOf(read.cases().values());
    } catch (IOException unreadable) {
      throw unreadable(surroundings);
    }
  }

  /** The case of that name, or in that file. */
  Exercise one(String named, Vocabulary known, Surroundings surroundings) {
    if (isFile(named)) {
      byte[] bytes = InputFile.read(named, "the cases: hornbook exercise list", surroundings);
      return parsed(bytes, InputFile.shown(named), known);
    }
    List<String> names = names(surroundings);
    if (!names.contains(named)) {
      String nearest = ExerciseLibrary.nearest(named, names);
      throw Failure.of(
          ExitCode.NO_INPUT,
          "there is no case " + named,
          nearest == null ? "all cases: hornbook exercise list" : "nearest: " + nearest);
    }
    Path file = ExerciseLibrary.file(folder(surroundings), named);
    return parsed(InputFile.read(file.toString(), null, surroundings), file.toString(), known);
  }

  private static Exercise parsed(byte[] bytes, String shown, Vocabulary known) {
    List<Fault> faults = new ArrayList<>();
    Exercise exercise = ExerciseReader.read(bytes, shown, known, faults);
    stopIfAny(faults);
    return exercise;
  }

  private static void stopIfAny(List<Fault> faults) {
    if (!faults.isEmpty()) {
      FaultsFound found = new FaultsFound(HINT);
      found.in(faults);
      found.stopIfAny();
    }
  }

  /** Whether a word on the command line names a file and not a case of the library. */
  static boolean isFile(String named) {
    try {
      boolean path = named.contains("/") || named.contains("\\") || named.contains(".");
      return named.equals(InputFile.STANDARD_INPUT) || path || Files.exists(Path.of(named));
    } catch (InvalidPathException noName) {
      return false;
    }
  }
}
