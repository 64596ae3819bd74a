package hornbook.study.rulecase;

import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.Fault;
import hornbook.rulebook.file.RuleFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The cases that lie beside a rule base: one or more a rule, and the exercises.
 *
 * @param rules the cases of rules by the name of their file: the rule's id, or for a further case
 *     the id, a hyphen and a word
 * @param exercises the assessments of exercises by their file
 * @param faults what could not be read, in words
 */
public record CaseLibrary(
    Map<String, RuleCase> rules, Map<String, Assessment> exercises, List<RuleFault> faults) {

  /** Reads {@code rules} and {@code exercises} below a folder; either may be absent. */
  public static CaseLibrary read(Path folder) throws IOException {
    return read(List.of(folder));
  }

  /** Reads several folders into one library. */
  public static CaseLibrary read(List<Path> folders) throws IOException {
    CaseLibrary library = new CaseLibrary(new TreeMap<>(), new TreeMap<>(), new ArrayList<>());
    for (Path folder : folders) {
      library.add(folder);
    }
    return new CaseLibrary(library.rules, library.exercises, List.copyOf(library.faults));
  }

  /** Whether there is nothing in it. */
  public boolean empty() {
    return rules.isEmpty() && exercises.isEmpty() && faults.isEmpty();
  }

  private void add(Path folder) throws IOException {
    for (Path file : files(folder.resolve("rules"))) {
      String name = file.getFileName().toString().replace(".yaml", "");
      try {
        rules.put(name, RuleCase.read(file));
      } catch (RuleCase.Unusable unusable) {
        String says = unusable.getMessage().replaceFirst("^" + name + "\\.yaml: ", "");
        faults.add(
            new RuleFault(
                shown(file),
                0,
                name.replaceFirst("-.*", ""),
                "the case cannot be read: " + says,
                "mend the case"));
      }
    }
    for (Path file : files(folder.resolve("exercises"))) {
      ReadResult read = AssessmentReader.read(Files.readAllBytes(file), shown(file), List.of());
      if (read instanceof ReadResult.Good good) {
        exercises.put(shown(file), good.assessment());
      } else {
        for (Fault fault : ((ReadResult.Faulty) read).faults()) {
          faults.add(
              new RuleFault(
                  shown(file),
                  fault.line(),
                  "",
                  fault.shownPath() + ": found " + fault.found(),
                  "allowed: " + fault.allowed()));
        }
      }
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** By its last folders, as contributors speak of it: {@code cases/rules/N003.yaml}. */
  public static String shown(Path file) {
    int names = file.getNameCount();
    return file.subpath(Math.max(0, names - 3), names).toString().replace('\\', '/');
  }
}
