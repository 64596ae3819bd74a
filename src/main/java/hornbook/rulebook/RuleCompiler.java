package hornbook.rulebook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/**
 * Turns rule files into classes: the engine's own generated model, which loads without any parsing.
 */
final class RuleCompiler {
  /** Compiled classes by path, and the name of the model class among them. */
  record Compiled(Map<String, byte[]> classes, String modelClass) {}

  private static final String MODEL_NAMES = "META-INF/kie/hornbook/rules/drools-model";

  private RuleCompiler() {}

  /** Compiles rule texts, keyed by the file they came from. */
  static Compiled compile(Map<String, String> texts) throws RuleBaseFaulty {
    KieServices services = KieServices.get();
    ReleaseId release = services.newReleaseId("hornbook", "rules", "1");
    KieFileSystem files = services.newKieFileSystem();
    files.generateAndWritePomXML(release);
    Map<String, String> origin = new LinkedHashMap<>();
    texts.forEach(
        (file, text) -> {
          String path = "src/main/resources/hornbook/rules/" + file.replace('/', '_');
          origin.put(path.substring("src/main/resources/".length()), file);
          files.write(path, DrlReader.HEADER + text);
        });
    KieBuilder builder = services.newKieBuilder(files);
    builder.buildAll(ExecutableModelProject.class);
    List<RuleFault> faults = new ArrayList<>();
    for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
      String path = String.valueOf(message.getPath());
      faults.add(
          new RuleFault(
              origin.getOrDefault(path, path),
              Math.max(0, message.getLine()),
              "",
              "does not compile: " + message.getText().lines().findFirst().orElse(""),
              ""));
    }
    if (!faults.isEmpty()) {
      throw new RuleBaseFaulty(faults);
    }
    InternalKieModule module = (InternalKieModule) builder.getKieModule();
    Map<String, byte[]> classes = new LinkedHashMap<>();
    String model = null;
    for (String name : module.getFileNames()) {
      if (name.endsWith(".class")) {
        classes.put(name, module.getBytes(name));
      } else if (name.equals(MODEL_NAMES)) {
        model = modelClass(new String(module.getBytes(name), StandardCharsets.UTF_8));
      }
    }
    services.getRepository().removeKieModule(release);
    return new Compiled(classes, model);
  }

  /**
   * The engine lists its model classes below a line with its own version; all rules are one
   * package.
   */
  private static String modelClass(String listed) {
    return listed
        .lines()
        .filter(line -> line.startsWith("hornbook.rules."))
        .findFirst()
        .orElseThrow();
  }
}
