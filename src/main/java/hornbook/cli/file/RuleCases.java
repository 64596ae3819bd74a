package hornbook.cli.file;

import hornbook.cli.base.Surroundings;
import hornbook.report.rules.CaseShown;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The cases of the rules, which lie beside the program. */
public final class RuleCases {
  private RuleCases() {}

  /**
   * The case that fires a rule; null where it is not at hand.
   *
   * @param own the folder of own rules, or null
   */
  public static CaseShown of(String rule, Path own, Surroundings surroundings) {
    try {
      for (Path folder : new Path[] {own, RulesFolder.shipped(surroundings)}) {
        Path file =
            folder == null ? null : RulesFolder.cases(folder).resolve("rules/" + rule + ".yaml");
        if (file != null && Files.isRegularFile(file)) {
          return read(file);
        }
      }
      return null;
    } catch (IOException unreadable) {
      return null;
    }
  }

  private static CaseShown read(Path file) {
    try {
      RuleCase one = RuleCase.read(file);
      return new CaseShown(one.title(), shown(file), one.nearMiss());
    } catch (IOException | RuleCase.Unusable unreadable) {
      return null;
    }
  }

  /** From the folder the user is in, where that is shorter. */
  private static String shown(Path file) {
    Path here = Path.of("").toAbsolutePath();
    return file.startsWith(here) ? here.relativize(file).toString() : file.toString();
  }
}
