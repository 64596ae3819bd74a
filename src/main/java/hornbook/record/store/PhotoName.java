package hornbook.record.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a picture is called in the book. */
final class PhotoName {
  private static final Pattern ENDING = Pattern.compile("(?s).*(\\.[a-z0-9]{1,8})");

  private PhotoName() {}

  /** The ending of a file's name, in small letters: {@code .jpg}; empty where it is none. */
  static String ending(Path file) {
    Matcher name = ENDING.matcher(file.getFileName().toString().toLowerCase(Locale.ROOT));
    return name.matches() ? name.group(1) : "";
  }
}
