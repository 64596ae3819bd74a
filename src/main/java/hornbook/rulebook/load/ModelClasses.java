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
}
