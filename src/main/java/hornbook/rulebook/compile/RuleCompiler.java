package hornbook.rulebook.compile;

import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.load.ModelClasses;
import hornbook.rulebook.read.DrlReader;
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
public final class RuleCompiler {
  /** Compiled classes by path, and the name of the model class among them. */
  public record Compiled(Map<String, byte[]> classes, String modelClass) {
    /** The names of the classes, the model first, as {@link ModelClasses} reads them. */
    String list() {
      List<String> names = new ArrayList<>();
      names.add(modelClass);
      for (String path : classes.keySet()) {
        String name = path.substring(0, path.length() - ".class".length()).replace('/', '.');
        if (name.contains(".Lambda")) {
          names.add(name);
        }
      }
      return String.join("\n", names) + "\n";
    }
  }

  private static final String MODEL_NAMES = "META-INF/kie/hornbook/rules/drools-model";

  /** The package of a whole rule base. */
  static final String WHOLE = "hornbook.rules";

  /** The package of rules that are added to the shipped ones, which have the other. */
  static final String ADDED = "hornbook.ownrules";

  private RuleCompiler() {}

  /**
   * Compiles rule texts, keyed by the file they came from.
   *
   * @throws RuleBaseFaulty naming every rule the engine does not take, however it failed on it
   */
  public static Compiled compile(Map<String, String> texts) throws RuleBaseFaulty {
    return compile(texts, WHOLE);
  }

  /** The same, into a package of that name. */
  public static Compiled compile(Map<String, String> texts, String into) throws RuleBaseFaulty {
    Compiled compiled = built(texts, into);
    if (compiled == null) {
      throw new RuleBaseFaulty(RefusedRules.in(texts));
    }
    return compiled;
  }

  /** The compiled rules; null where the engine takes offence at any of them. */
  static Compiled built(Map<String, String> texts) {
    return built(texts, WHOLE);
  }

  private static Compiled built(Map<String, String> texts, String into) {
    try {
      return build(texts, into);
    } catch (RuntimeException | LinkageError | AssertionError engineFault) {
      return null;
    }
  }

  private static Compiled build(Map<String, String> texts, String into) {
    String folder = into.replace('.', '/');
    String header = DrlReader.HEADER.replace("package " + WHOLE + ";", "package " + into + ";");
    KieServices services = KieServices.get();
    ReleaseId release = services.newReleaseId("hornbook", "rules", "1");
    KieFileSystem files = services.newKieFileSystem();
    files.generateAndWritePomXML(release);
    texts.forEach(
        (file, text) -> {
          String path = "src/main/resources/" + folder + "/" + file.replace('/', '_');
          files.write(path, header + text);
        });
    KieBuilder builder = services.newKieBuilder(files);
    builder.buildAll(ExecutableModelProject.class);
    if (builder.getResults().hasMessages(Message.Level.ERROR)) {
      return null;
    }
    InternalKieModule module = (InternalKieModule) builder.getKieModule();
    Map<String, byte[]> classes = new LinkedHashMap<>();
    String model = null;
    for (String name : module.getFileNames()) {
      if (name.endsWith(".class")) {
        classes.put(name, module.getBytes(name));
      } else if (name.equals(MODEL_NAMES)) {
        model = modelClass(new String(module.getBytes(name), StandardCharsets.UTF_8), into);
      }
    }
    services.getRepository().removeKieModule(release);
    return new Compiled(classes, model);
  }

  /**
   * The engine lists its model classes below a line with its own version; all rules are one
   * package.
   */
  private static String modelClass(String listed, String into) {
    return listed.lines().filter(line -> line.startsWith(into + ".")).findFirst().orElseThrow();
  }
}
