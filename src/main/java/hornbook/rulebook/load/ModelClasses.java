package hornbook.rulebook.load;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The names of the compiled rules' classes, the model first, as the build lists them. */
public final class ModelClasses {
  public static final String LIST = "hornbook/rulebook/classes.txt";

  private ModelClasses() {}

  public static List<String> read(ClassLoader from) {
    try (InputStream in = from.getResourceAsStream(LIST)) {
      if (in == null) {
        throw new IllegalStateException("the program was packaged without its rules");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Loads all classes but the model, the last first: another thread is coming from the front. */
  static void preload(List<String> names, ClassLoader from) {
    for (int at = names.size() - 1; at > 0; at--) {
      try {
        Class.forName(names.get(at), true, from);
      } catch (ClassNotFoundException damaged) {
        throw new IllegalStateException(damaged);
      }
    }
  }
}
