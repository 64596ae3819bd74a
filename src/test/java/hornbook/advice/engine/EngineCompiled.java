package hornbook.advice.engine;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FiredRule;
import hornbook.advice.fact.FactSheet;
import hornbook.rulebook.fact.Conclusion;
import hornbook.rulebook.read.DrlReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.Model;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;

/**
 * Rule files as the engine's own compiler understands them: the twin that the rules the program
 * puts together from its catalogue are held against.
 */
final class EngineCompiled {
  private static final String PACKAGE = "hornbook.rules";
  private static final String MODEL = "META-INF/kie/hornbook/rules/drools-model";

  private final KieBase rules;

  private EngineCompiled(KieBase rules) {
    this.rules = rules;
  }

  /** Compiles rule texts, keyed by the file they came from. */
  static EngineCompiled of(Map<String, String> texts) throws ReflectiveOperationException {
    KieServices services = KieServices.get();
    ReleaseId release = services.newReleaseId("hornbook", "rules", "1");
    KieFileSystem files = services.newKieFileSystem();
    files.generateAndWritePomXML(release);
    String folder = "src/main/resources/" + PACKAGE.replace('.', '/') + "/";
    texts.forEach(
        (file, text) -> files.write(folder + file.replace('/', '_'), DrlReader.HEADER + text));
    KieBuilder builder = services.newKieBuilder(files);
    builder.buildAll(ExecutableModelProject.class);
    assertThat(builder.getResults().getMessages(Message.Level.ERROR)).isEmpty();
    InternalKieModule module = (InternalKieModule) builder.getKieModule();
    Map<String, byte[]> classes = new HashMap<>();
    for (String name : module.getFileNames()) {
      if (name.endsWith(".class")) {
        String dotted = name.substring(0, name.length() - ".class".length()).replace('/', '.');
        classes.put(dotted, module.getBytes(name));
      }
    }
    String model =
        new String(module.getBytes(MODEL), StandardCharsets.UTF_8)
            .lines()
            .filter(classes::containsKey)
            .findFirst()
            .orElseThrow();
    Class<?> generated = new InMemory(classes).loadClass(model);
    return new EngineCompiled(
        KieBaseBuilder.createKieBaseFromModel(
            (Model) generated.getDeclaredConstructor().newInstance()));
  }

  /** Every firing on a foot, in no certain order. */
  List<FiredRule> fire(FactSheet sheet) {
    List<FiredRule> firings = new ArrayList<>();
    KieSession session = rules.newKieSession();
    try {
      session.addEventListener(new Recorder(firings));
      sheet.limits().values().forEach(session::insert);
      sheet.observed().forEach(session::insert);
      session.fireAllRules();
    } finally {
      session.dispose();
    }
    return firings;
  }

  private static final class Recorder extends DefaultRuleRuntimeEventListener {
    private final List<FiredRule> firings;

    Recorder(List<FiredRule> firings) {
      this.firings = firings;
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
      if (event.getRule() != null && event.getObject() instanceof Conclusion conclusion) {
        firings.add(new FiredRule((String) event.getRule().getMetaData().get("id"), conclusion));
      }
    }
  }

  private static final class InMemory extends ClassLoader {
    private final Map<String, byte[]> classes;

    InMemory(Map<String, byte[]> classes) {
      super(EngineCompiled.class.getClassLoader());
      this.classes = classes;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      byte[] bytes = classes.get(name);
      if (bytes == null) {
        throw new ClassNotFoundException(name);
      }
      return defineClass(name, bytes, 0, bytes.length);
    }
  }
}
