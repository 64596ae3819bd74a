package hornbook.rulebook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * The rule base of a folder, compiled while the program runs. Its rules become Java code that this
 * program then carries out: only for folders whose authors are trusted.
 */
public final class FolderRules {
  private FolderRules() {}

  /** Reads, checks, compiles and loads the rules of a folder. */
  public static LoadedRules load(Path folder) throws IOException, RuleBaseFaulty {
    return load(RulebookReader.read(folder));
  }

  /** Compiles and loads what was read before and found in order. */
  public static LoadedRules load(RulebookReader.Draft draft) throws RuleBaseFaulty {
    RuleCompiler.Compiled compiled = RuleCompiler.compile(draft.texts());
    ClassLoader classes = new InMemory(compiled.classes());
    try {
      Model model =
          (Model)
              Class.forName(compiled.modelClass(), true, classes)
                  .getDeclaredConstructor()
                  .newInstance();
      KieBase rules = KieBaseBuilder.createKieBaseFromModel(model);
      return new LoadedRules(draft.compiledAs(compiled.modelClass()), rules);
    } catch (ReflectiveOperationException | RuntimeException | LinkageError damaged) {
      throw new RuleBaseFaulty(RefusedRules.in(draft.texts()));
    }
  }

  /** Finds classes among bytes; the shipped rules have the same names, so these come first. */
  private static final class InMemory extends ClassLoader {
    private final Map<String, byte[]> classes;

    InMemory(Map<String, byte[]> classes) {
      super(FolderRules.class.getClassLoader());
      this.classes = classes;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      synchronized (getClassLoadingLock(name)) {
        byte[] bytes = classes.get(name.replace('.', '/') + ".class");
        if (bytes == null) {
          return super.loadClass(name, resolve);
        }
        Class<?> known = findLoadedClass(name);
        return known == null ? defineClass(name, bytes, 0, bytes.length) : known;
      }
    }
  }
}
