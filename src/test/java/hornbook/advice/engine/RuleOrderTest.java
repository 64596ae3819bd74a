package hornbook.advice.engine;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FiredRule;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rules.Shipped;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The advice hangs neither on the order of the rules nor on how often it is asked for, and the
 * rules put together from the catalogue say what the engine's own compiler makes of the rule files.
 */
class RuleOrderTest {
  @Test
  void the_engines_own_compiler_fires_the_same_with_files_in_any_order() throws Exception {
    List<RuleFault> faults = new ArrayList<>();
    Map<String, String> texts = RuleFiles.read(Path.of("rules"), faults).texts();
    List<String> files = new ArrayList<>(texts.keySet());
    files.removeIf(file -> !file.endsWith(".drl"));
    Collections.shuffle(files, new Random(7));
    Map<String, String> shuffled = new LinkedHashMap<>();
    files.forEach(file -> shuffled.put(file, texts.get(file)));
    EngineCompiled compiled = EngineCompiled.of(shuffled);
    for (Assessment one : cases()) {
      Advice advice = Shipped.ADVISOR.advise(one);
      for (int foot = 0; foot < one.feet().size(); foot++) {
        List<FiredRule> fired = compiled.fire(Shipped.ADVISOR.sheet(one, foot));
        fired.sort(new FiringOrder());
        Map<String, FiredRule> first = new LinkedHashMap<>();
        fired.forEach(firing -> first.putIfAbsent(firing.rule(), firing));
        assertThat(advice.feet().get(foot).firings())
            .as("all rules laid out")
            .containsExactlyElementsOf(first.values());
      }
      Advisor fresh = new Advisor(Shipped.RULES);
      assertThat(fresh.advise(one).feet()).as("only those within reach").isEqualTo(advice.feet());
    }
  }

  @Test
  void twenty_times_asked_is_twenty_times_the_same() throws Exception {
    for (Assessment exercise : exercises()) {
      Advice first = Shipped.ADVISOR.advise(exercise);
      for (int time = 1; time < 19; time++) {
        assertThat(Shipped.ADVISOR.advise(exercise).feet()).isEqualTo(first.feet());
      }
      assertThat(told(Shipped.ADVISOR.advise(exercise))).isEqualTo(told(first));
    }
  }

  /** Everything in the advice, as text, which tells in what order it stands as well. */
  private static String told(Advice advice) {
    return advice.feet().toString();
  }

  private static List<Assessment> exercises() throws Exception {
    return read(Shipped.EXERCISES);
  }

  private static List<Assessment> cases() throws Exception {
    List<Assessment> cases = new ArrayList<>(exercises());
    cases.addAll(read(Shipped.CASES));
    return cases;
  }

  private static List<Assessment> read(Path folder) throws Exception {
    List<Assessment> exercises = new ArrayList<>();
    for (Path file : Shipped.files(folder)) {
      ReadResult read = AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
      exercises.add(((ReadResult.Good) read).assessment());
    }
    return exercises;
  }
}
