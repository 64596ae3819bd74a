package hornbook.rulebook.load;

import hornbook.rulebook.Rulebook;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The rule base that comes with the program, compiled to a catalogue when it was built. */
public final class ShippedRules {
  /** Where the build puts the catalogue, beside the classes. */
  public static final String CATALOGUE = "hornbook/rulebook/catalogue.bin";

  private ShippedRules() {}

  /** The catalogue alone: quick, and enough for everything that does not fire a rule. */
  public static Rulebook book() {
    return book(ShippedRules.class.getClassLoader());
  }

  /** The catalogue as rules that may fire. */
  public static LoadedRules load() {
    return load(ShippedRules.class.getClassLoader());
  }

  static Rulebook book(ClassLoader from) {
    try (InputStream in = from.getResourceAsStream(CATALOGUE)) {
      if (in == null) {
        throw new IllegalStateException("the program was packaged without its rules");
      }
      return CatalogueReader.read(in);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static LoadedRules load(ClassLoader from) {
    return new LoadedRules(book(from));
  }
}
