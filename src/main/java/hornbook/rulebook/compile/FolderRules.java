package hornbook.rulebook.compile;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.load.ModelClasses;
import hornbook.rulebook.read.RulebookReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * The rule base of a folder, compiled while the program runs: whole, or added to the shipped one.
 * Its rules become Java code that this program then carries out: only for folders whose authors are
 * trusted.
 */
public final class FolderRules {
  /** Tells a rule base that is added to the shipped one by its classes. */
  private static final String ADDED = RuleCompiler.ADDED + ".";

  private FolderRules() {}

  /** Reads, checks, compiles and loads the rules of a folder. */
  public static LoadedRules load(Path folder) throws IOException, RuleBaseFaulty {
    return load(RulebookReader.read(folder));
  }

  /**
   * The same, but compiled once only: what was compiled is kept in a folder, and taken from there
   * as long as neither rules nor program nor Java change.
   *
   * @param kept the folder; null to keep nothing
   */
  public static LoadedRules load(Path folder, Path kept) throws IOException, RuleBaseFaulty {
    List<RuleFault> faults = new ArrayList<>();
    RuleFiles files = RuleFiles.read(folder, faults);
    if (kept == null || !faults.isEmpty()) {
      return load(folder);
    }
    KeptRules keep = new KeptRules(kept, files);
    KeptRules.Kept found = keep.read();
    if (found != null) {
      try {
        return loaded(found.book(), found.classes());
      } catch (ReflectiveOperationException | RuntimeException | LinkageError damaged) {
        // Built anew, as if nothing had been kept.
      }
    }
    RulebookReader.Draft draft = RulebookReader.read(folder);
    RuleCompiler.Compiled compiled = compiled(draft);
    LoadedRules loaded = load(draft, compiled);
    keep.write(loaded.book(), compiled.classes());
    return loaded;
  }

  /** Compiles and loads what was read before and found in order. */
  public static LoadedRules load(RulebookReader.Draft draft) throws RuleBaseFaulty {
    return load(draft, compiled(draft));
  }

  private static RuleCompiler.Compiled compiled(RulebookReader.Draft draft) throws RuleBaseFaulty {
    String into = draft.extended() ? RuleCompiler.ADDED : RuleCompiler.WHOLE;
    return RuleCompiler.compile(draft.texts(), into);
  }

  private static LoadedRules load(RulebookReader.Draft draft, RuleCompiler.Compiled compiled)
      throws RuleBaseFaulty {
    try {
      return loaded(draft.compiledAs(compiled.modelClass()), compiled.classes());
    } catch (ReflectiveOperationException | RuntimeException | LinkageError damaged) {
      throw new RuleBaseFaulty(RefusedRules.in(draft.texts()));
    }
  }

  private static LoadedRules loaded(Rulebook book, Map<String, byte[]> classes)
      throws ReflectiveOperationException {
    List<Model> models = new ArrayList<>();
    ClassLoader shipped = FolderRules.class.getClassLoader();
    if (book.modelClass().startsWith(ADDED)) {
      models.add(model(ModelClasses.read(shipped).get(0), shipped));
    }
    models.add(model(book.modelClass(), new InMemory(classes)));
    KieBase rules = KieBaseBuilder.createKieBaseFromModel(models);
    return new LoadedRules(book, rules);
  }

  private static Model model(String name, ClassLoader from) throws ReflectiveOperationException {
    return (Model) Class.forName(name, true, from).getDeclaredConstructor().newInstance();
  }

  /** Finds classes among bytes; the shipped rules may have the same names, so these come first. */
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
