package hornbook.record.store;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where a daybook lies that nobody has named a place for: with the user's own data, as the platform
 * has it (on Linux the XDG Base Directory Specification, version 0.8).
 */
public final class BookPlace {
  /** The variable that names another place. */
  public static final String VARIABLE = "HORNBOOK_BOOK";

  private BookPlace() {}

  /**
   * The folder of the book.
   *
   * @param environment the variables of the user
   * @param system name of the operating system, as Java tells it
   * @param home the user's own folder
   */
  public static Path of(Map<String, String> environment, String system, String home) {
    String named = environment.getOrDefault(VARIABLE, "");
    if (!named.isEmpty()) {
      return Path.of(named);
    }
    return data(environment, system.toLowerCase(Locale.ROOT), Path.of(home))
        .resolve("hornbook")
        .resolve("daybook");
  }

  private static Path data(Map<String, String> environment, String system, Path home) {
    if (system.startsWith("windows")) {
      return absolute(environment.get("APPDATA"), home.resolve("AppData").resolve("Roaming"));
    }
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support");
    }
    return absolute(environment.get("XDG_DATA_HOME"), home.resolve(".local").resolve("share"));
  }

  /** A place that is not told from the root is to be left aside, says the specification. */
  private static Path absolute(String named, Path otherwise) {
    try {
      return named == null || named.isEmpty() || !Path.of(named).isAbsolute()
          ? otherwise
          : Path.of(named);
    } catch (InvalidPathException none) {
      return otherwise;
    }
  }
}
