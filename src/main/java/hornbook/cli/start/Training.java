package hornbook.cli.start;

import hornbook.cli.Hornbook;
import hornbook.cli.base.ShippedWithProgram;
import hornbook.cli.base.Surroundings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
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
    ShippedWithProgram rules = new ShippedWithProgram();
    rules.loadAhead();
    Surroundings surroundings = Surroundings.silent(home, rules);
    for (Path file : exercises(home)) {
      run(surroundings, "assess", file.toString());
    }
    String glued = home.resolve("cases/exercises/showjumper-torn-side.yaml").toString();
    run(surroundings, "assess", "--format", "json", glued);
    run(surroundings, "assess", "--format", "html", glued);
    run(surroundings, "plan", glued, "--technique", "glue-on");
    run(surroundings, "why", glued, "glue-on");
    run(surroundings, "contrast", glued);
    run(surroundings, "confidence", glued, "--runs", "100");
    run(surroundings, "rules", "list");
    run(surroundings, "rules", "show", "N003");
    Path folder = Files.createTempDirectory("hornbook-training-");
    try {
      daybook(surroundings, glued, folder.resolve("book").toString());
      lesson(surroundings, "showjumper-torn-side", folder.resolve("answer.yaml").toString());
    } finally {
      delete(folder);
    }
    run(surroundings, "--help");
    run(surroundings, "--version");
  }

  /** Two visits. */
  private static void daybook(Surroundings surroundings, String visit, String book) {
    for (int i = 0; i < 2; i++) {
      run(surroundings, "record", "add", visit, "--chose", "glue-on", "--book", book);
    }
    run(surroundings, "record", "list", "--book", book);
    run(surroundings, "record", "show", "1", "--book", book);
    run(surroundings, "record", "show", "1", "--format", "html", "--book", book);
    run(surroundings, "record", "history", "--horse", "Tansy", "--book", book);
    for (String reader : List.of("vet", "owner", "calendar")) {
      run(surroundings, "record", "export", "1", "--for", reader, "--book", book);
    }
    run(surroundings, "record", "verify", "--book", book);
  }

  /** A case looked at, answered with nothing, and marked. */
  private static void lesson(Surroundings surroundings, String named, String answer) {
    run(surroundings, "exercise", "list");
    run(surroundings, "exercise", "show", named);
    run(surroundings, "exercise", "sheet", named, "--output", answer);
    run(surroundings, "critique", named, answer);
    run(surroundings, "mark", named, answer);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  private static List<Path> exercises(Path home) throws IOException {
    try (Stream<Path> files = Files.list(home.resolve("cases/exercises"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static void run(Surroundings surroundings, String... command) {
    if (Hornbook.run(surroundings, command) != 0) {
      throw new IllegalStateException(String.join(" ", command));
    }
  }
}
