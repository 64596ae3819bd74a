package hornbook.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Runs what users run most, so that Java can note in the start-up archive which classes are needed.
 */
public final class Training {
  private Training() {}

  /**
   * Takes the program's folder; ends with 1 if one of the commands fails, and then makes no
   * archive.
   */
  public static void main(String[] arguments) throws IOException {
    Path home = Path.of(arguments[0]);
    for (Path file : exercises(home)) {
      run(home, "assess", file.toString());
      run(home, "assess", "--format", "json", file.toString());
    }
    run(home, "rules", "list");
    run(home, "rules", "show", "N003");
    run(home, "--help");
    run(home, "--version");
  }

  private static List<Path> exercises(Path home) throws IOException {
    try (Stream<Path> files = Files.list(home.resolve("cases/exercises"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static void run(Path home, String... command) {
    OutputStream nowhere = OutputStream.nullOutputStream();
    Surroundings surroundings =
        new Surroundings(
            new ByteArrayInputStream(new byte[0]),
            nowhere,
            new PrintStream(nowhere),
            Map.of(),
            false,
            home,
            new ShippedWithProgram());
    int code = Hornbook.run(surroundings, command);
    if (code != 0) {
      System.exit(1);
    }
  }
}
