package hornbook.cli.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * Tells a result of this program from a file of somebody's own by what stands in it: the format of
 * its JSON, the title of its page, the line on decision support, the producer of its PDF. What
 * carries none of these, such as a list of rules, counts as the user's.
 */
final class ResultMark {
  /** As much of a file as is looked at from its beginning. */
  private static final int LOOKED_AT = 1 << 20;

  /** What a user writes has a format too: an assessment, an answer, a practice. */
  private static final Pattern RESULT =
      Pattern.compile(
          "\\{\\s*\"format\"\\s*:\\s*\"hornbook-(?!assessment|answer|entry|practice|marking|review)");

  private static final Pattern PAGE =
      Pattern.compile("(# |<!DOCTYPE html>.{0,400}<title>)?Hornbook[ :].*", Pattern.DOTALL);

  private static final String SAFETY = "Decision support, not a diagnosis";

  private ResultMark() {}

  /** Whether a file is a result, or nothing yet. */
  static boolean in(Path file) throws IOException {
    try (InputStream from = Files.newInputStream(file)) {
      String text = new String(from.readNBytes(LOOKED_AT), StandardCharsets.ISO_8859_1);
      return text.isBlank()
          || RESULT.matcher(text).lookingAt()
          || PAGE.matcher(text).matches()
          || text.contains(SAFETY)
          || text.startsWith("%PDF-") && text.contains("Hornbook");
    }
  }
}
