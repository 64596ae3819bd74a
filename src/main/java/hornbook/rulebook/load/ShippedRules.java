package hornbook.rulebook.load;

import hornbook.rulebook.Rulebook;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** The rule base that comes with the program, compiled when it was built. */
public final class ShippedRules {
  /** Where the build puts the catalogue, beside the classes. */
  public static final String CATALOGUE = "hornbook/rulebook/catalogue.bin";

  private ShippedRules() {}

  /** The catalogue alone: quick, and enough for everything that does not fire a rule. */
  public static Rulebook book() {
    return book(ShippedRules.class.getClassLoader());
  }

  /** The catalogue with the rules ready to fire. */
  public static LoadedRules load() {
    return load(ShippedRules.class.getClassLoader());
  }

  static Rulebook book(ClassLoader from) {
    try (InputStream in = from.getResourceAsStream(CATALOGUE)) {
      if (in == null) {
        throw new IllegalStateException("the program was packaged without its rules");
      }
      return CatalogueReader.read(new BufferedInputStream(in, 1 << 16));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * The engine lays out its network on a thread of its own while the catalogue is read here, and a
   * third loads the classes the engine is about to need. Nobody waits for the engine before a rule
   * is to be fired.
   */
  static LoadedRules load(ClassLoader from) {
    List<String> classes = ModelClasses.read(from);
    CompletableFuture<KieBase> rules = new CompletableFuture<>();
    begin("engine", () -> complete(rules, classes.get(0), from));
    Rulebook book = book(from);
    begin("classes", () -> ModelClasses.preload(classes, from));
    return new LoadedRules(book, rules::join);
  }

  private static void complete(CompletableFuture<KieBase> rules, String model, ClassLoader from) {
    try {
      Class<?> compiled = Class.forName(model, true, from);
      Model built = (Model) compiled.getDeclaredConstructor().newInstance();
      rules.complete(KieBaseBuilder.createKieBaseFromModel(built));
    } catch (ReflectiveOperationException | RuntimeException | Error damaged) {
      rules.completeExceptionally(damaged);
    }
  }

  private static void begin(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
  }
}
