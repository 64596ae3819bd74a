package hornbook.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.compile.RuleCompiler;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.read.RulebookReader;
import hornbook.rules.Shipped;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.Test;

/**
 * The advice hangs neither on the order of the rules nor on how often it is asked for, and the
 * rules put together from the catalogue say what the engine's own compiler makes of the rule files.
 */
class RuleOrderTest {
  @Test
  void the_engines_own_compiler_gives_the_same_advice_with_files_in_any_order() throws Exception {
    RulebookReader.Draft draft = RulebookReader.read(Path.of("rules"));
    List<String> files = new ArrayList<>(draft.texts().keySet());
    Collections.shuffle(files, new Random(7));
    Map<String, String> shuffled = new LinkedHashMap<>();
    files.forEach(file -> shuffled.put(file, draft.texts().get(file)));
    RuleCompiler.Compiled compiled = RuleCompiler.compile(shuffled);
    Model model =
        (Model)
            new InMemory(compiled.classes())
                .loadClass(compiled.modelClass())
                .getDeclaredConstructor()
                .newInstance();
    Advisor other =
        new Advisor(new LoadedRules(Shipped.BOOK, KieBaseBuilder.createKieBaseFromModel(model)));
    for (Assessment one : cases()) {
      String said = told(other.advise(one));
      assertThat(told(Shipped.ADVISOR.advise(one))).as("all rules laid out").isEqualTo(said);
      Advisor fresh = new Advisor(Shipped.RULES);
      assertThat(told(fresh.advise(one))).as("only those within reach").isEqualTo(said);
    }
  }

  @Test
  void twenty_times_asked_is_twenty_times_the_same() throws Exception {
    for (Assessment exercise : exercises()) {
      String first = told(Shipped.ADVISOR.advise(exercise));
      for (int time = 1; time < 20; time++) {
        assertThat(told(Shipped.ADVISOR.advise(exercise))).isEqualTo(first);
      }
    }
  }

  /** Everything in the advice, as text. */
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

  /** Loads the compiled rules before those the program ships. */
  private static final class InMemory extends ClassLoader {
    private final Map<String, byte[]> classes;

    InMemory(Map<String, byte[]> classes) {
      super(RuleOrderTest.class.getClassLoader());
      this.classes = classes;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      byte[] bytes = classes.get(name.replace('.', '/') + ".class");
      if (bytes == null) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      return loaded != null ? loaded : defineClass(name, bytes, 0, bytes.length);
    }
  }
}
