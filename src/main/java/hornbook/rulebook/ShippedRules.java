package hornbook.rulebook;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/** The rule base that comes with the program, compiled when it was built. */
public final class ShippedRules {
  /** Where the build puts the catalogue, beside the classes. */
  static final String CATALOGUE = "hornbook/rulebook/catalogue.bin";

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
   * The engine builds its network on one thread while a second reads the catalogue and loads the
   * classes the first is about to need: together they cost the longer of the two.
   */
  static LoadedRules load(ClassLoader from) {
    List<String> classes = ModelClasses.read(from);
    Rulebook[] book = new Rulebook[1];
    Thread reading =
        new Thread(
            () -> {
              book[0] = book(from);
              ModelClasses.preload(classes, from);
            },
            "catalogue");
    reading.setDaemon(true);
    reading.start();
    try {
      Model model =
          (Model) Class.forName(classes.get(0), true, from).getDeclaredConstructor().newInstance();
      KieBase rules = KieBaseBuilder.createKieBaseFromModel(model);
      reading.join();
      return new LoadedRules(book[0], rules);
    } catch (ReflectiveOperationException damaged) {
      throw new IllegalStateException(damaged);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }
}
