package hornbook.study.rulecase;

import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The assessments of every case below a folder, and of the near-misses of the rules' cases. */
public final class CaseFeet {
  /** Lies among the cases and says how answers are marked: there is no foot in it. */
  private static final String SCHEME = "marking.yaml";

  private CaseFeet() {}

  /**
   * By their names.
   *
   * @param faults takes what is wrong with the files that cannot be read
   */
  public static Map<String, Assessment> read(Path folder, List<Fault> faults) throws IOException {
    Map<String, Assessment> feet = new LinkedHashMap<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(CaseFeet::isCase).sorted().toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        ReadResult read =
            AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
        if (read instanceof ReadResult.Good good) {
          feet.put(name, good.assessment());
          nearMiss(name, file, feet);
        } else {
          faults.addAll(((ReadResult.Faulty) read).faults());
        }
      }
    }
    return feet;
  }

  private static boolean isCase(Path file) {
    String name = file.getFileName().toString();
    return Files.isRegularFile(file)
        && (name.endsWith(".yaml") || name.endsWith(".json"))
        && !name.equals(SCHEME);
  }

  private static void nearMiss(String name, Path file, Map<String, Assessment> feet)
      throws IOException {
    try {
      RuleCase one = RuleCase.read(file);
      feet.put(name + ", near-miss", one.with(one.nearMiss()));
    } catch (RuleCase.Unusable noCaseOfARule) {
      // An exercise, or an assessment alone: it has no near-miss.
    }
  }
}
