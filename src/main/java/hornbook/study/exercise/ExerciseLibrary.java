package hornbook.study.exercise;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.Nearest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The teaching cases of a folder by their names, and what is wrong with those left out. */
public record ExerciseLibrary(Map<String, Exercise> cases, List<Fault> faults) {
  private static final String ENDING = ".yaml";

  /** Reads every case of a folder, in the order of their names. */
  public static ExerciseLibrary read(Path folder, Vocabulary known) throws IOException {
    Map<String, Exercise> cases = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>();
    for (String name : names(folder)) {
      Path file = folder.resolve(name + ENDING);
      Exercise one = ExerciseReader.read(Files.readAllBytes(file), file.toString(), known, faults);
      if (one != null) {
        cases.put(one.name(), one);
      }
    }
    return new ExerciseLibrary(cases, List.copyOf(faults));
  }

  /** The names of the cases of a folder; none where there is no such folder. */
  public static List<String> names(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(ENDING))
          .map(name -> name.substring(0, name.length() - ENDING.length()))
          .sorted()
          .toList();
    }
  }

  /** The file of a case of that name. */
  public static Path file(Path folder, String name) {
    return folder.resolve(name + ENDING);
  }

  /** The nearest known name to one that is not known, or null. */
  public static String nearest(String name, List<String> names) {
    String nearest = Nearest.of(name, names);
    return nearest != null
        ? nearest
        : names.stream().filter(one -> one.contains(name)).findFirst().orElse(null);
  }
}
