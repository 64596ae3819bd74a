package hornbook.cli;

import hornbook.cli.base.Surroundings;
import hornbook.report.page.PageWidth;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The help of each command as the build has written it down, plain and of the usual width. Laying
 * it out anew takes longer than all the rest of such a start.
 */
final class PreparedHelp {
  private static final List<String> ASKED = List.of("--help", "-h");

  private PreparedHelp() {}

  /** The file of a command's help, by its name in full. */
  static Path file(Path home, String name) {
    return home.resolve("help").resolve(name.replace(' ', '-') + ".txt");
  }

  /** The help these arguments ask for; null where it has to be laid out. */
  static String of(Surroundings surroundings, String... arguments) {
    int last = arguments.length - 1;
    boolean usual = surroundings.screen().columns(false) == PageWidth.USUAL;
    if (last < 0 || !ASKED.contains(arguments[last]) || !usual || surroundings.colour()) {
      return null;
    }
    StringBuilder name = new StringBuilder("hornbook");
    for (int at = 0; at < last; at++) {
      if (!word(arguments[at])) {
        return null;
      }
      name.append(' ').append(arguments[at]);
    }
    try {
      return surroundings.home() == null
          ? null
          : Files.readString(file(surroundings.home(), name.toString()), StandardCharsets.UTF_8);
    } catch (IOException notThere) {
      return null;
    }
  }

  /** Whether it can be the name of a command. */
  private static boolean word(String argument) {
    for (int at = 0; at < argument.length(); at++) {
      char letter = argument.charAt(at);
      if (!(letter >= 'a' && letter <= 'z' || letter == '-' && at > 0)) {
        return false;
      }
    }
    return !argument.isEmpty();
  }
}
