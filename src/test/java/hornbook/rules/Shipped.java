package hornbook.rules;

import hornbook.advice.Advice;
import hornbook.advice.FiredRule;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.load.ShippedRules;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The rule base as the program ships it, loaded once for all tests, with its cases. */
public final class Shipped {
  public static final LoadedRules RULES = ShippedRules.load();
  public static final Rulebook BOOK = RULES.book();
  public static final Advisor ADVISOR = new Advisor(RULES);
  public static final Path CASES = Path.of("cases/rules");
  public static final Path EXERCISES = Path.of("cases/exercises");

  private Shipped() {}

  /** Read once they are asked for. */
  private static Map<String, RuleCase> ruleCases;

  /** The case of every rule, by rule id. */
  public static synchronized Map<String, RuleCase> ruleCases()
      throws IOException, RuleCase.Unusable {
    if (ruleCases == null) {
      Map<String, RuleCase> cases = new TreeMap<>();
      for (Path file : files(CASES)) {
        RuleCase one = RuleCase.read(file);
        cases.put(file.getFileName().toString().replace(".yaml", ""), one);
      }
      ruleCases = Collections.unmodifiableMap(cases);
    }
    return ruleCases;
  }

  public static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** The ids of the rules that fire on one foot. */
  public static Set<String> fired(Advisor advisor, Assessment assessment, int foot) {
    Set<String> fired = new TreeSet<>();
    Advice advice = advisor.judge(assessment);
    for (FiredRule firing : advice.feet().get(foot).firings()) {
      fired.add(firing.rule());
    }
    return fired;
  }
}
