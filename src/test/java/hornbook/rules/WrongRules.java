package hornbook.rules;

import hornbook.advice.fact.ComputingLimits;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * A small rule base in good order, and small changes that each put one thing in it wrong: {@code
 * wrong-rules/good} and {@code wrong-rules/wrong/*.yaml}.
 */
public final class WrongRules {
  static final Path FOLDER = Path.of("src/test/resources/wrong-rules");

  /**
   * One wrong rule base.
   *
   * @param fires whether its fault shows only when rules are fired
   */
  public record Wrong(
      String name,
      String what,
      boolean fires,
      List<Map<String, Object>> changes,
      List<Map<String, String>> faults) {

    /** Lays the rule base out below an empty folder: {@code rules} and {@code cases}. */
    public void layOut(Path folder) throws IOException {
      WrongRules.layOutGood(folder);
      for (Map<String, Object> change : changes) {
        Path file = folder.resolve((String) change.get("file"));
        String text = Files.exists(file) ? Files.readString(file) : "";
        if (change.containsKey("delete")) {
          Files.delete(file);
        } else if (change.containsKey("add")) {
          String gap = file.toString().endsWith(".drl") ? "\n" : "";
          Files.writeString(file, text + gap + change.get("add"));
        } else {
          String from = ((String) change.get("from")).replace("\\n", "\n");
          if (!text.contains(from)) {
            throw new IllegalStateException(name + ": " + file + " does not hold " + from);
          }
          String to = ((String) change.get("to")).replace("\\n", "\n");
          Files.writeString(file, text.replace(from, to));
        }
      }
    }
  }

  private WrongRules() {}

  public static List<Wrong> all() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER.resolve("wrong"))) {
      return files.sorted().map(WrongRules::read).toList();
    }
  }

  /** The one of this name. */
  public static Wrong named(String name) {
    return read(FOLDER.resolve("wrong").resolve(name + ".yaml"));
  }

  @SuppressWarnings("unchecked")
  private static Wrong read(Path file) {
    try {
      Map<String, Object> read =
          (Map<String, Object>)
              new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
      return new Wrong(
          file.getFileName().toString().replace(".yaml", ""),
          (String) read.get("what"),
          read.containsKey("fires"),
          (List<Map<String, Object>>) read.get("change"),
          (List<Map<String, String>>) read.get("faults"));
    } catch (IOException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  /** The good rule base, with the limits that the computing of any foot takes. */
  public static void layOutGood(Path folder) throws IOException {
    Path good = FOLDER.resolve("good");
    try (Stream<Path> files = Files.walk(good)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(good.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    Set<String> taken = ComputingLimits.missing(Map.of());
    StringBuilder limits = new StringBuilder();
    for (Limit limit : Shipped.BOOK.limits()) {
      if (limit.computing() || taken.contains(limit.id())) {
        limits.append(written(limit));
      }
    }
    Path computing = folder.resolve("rules/computing/limits.yaml");
    Files.createDirectories(computing.getParent());
    Files.writeString(computing, limits);
  }

  private static String written(Limit limit) {
    return """
        - id: %s
          label: "%s"
          value: %s
          unit: "%s"
          direction: %s
          inclusive: %s
        %s%s  source: practice
          locator: "as shipped"
          basis: practice
          safer: %s
          step: %s
          uses: computing
        """
        .formatted(
            limit.id(),
            limit.label(),
            limit.value(),
            limit.unit(),
            word(limit.direction()),
            limit.inclusive(),
            limit.limbs() == null ? "" : "  limbs: " + word(limit.limbs()) + "\n",
            limit.age() == null ? "" : "  age: " + word(limit.age()) + "\n",
            word(limit.safer()),
            limit.step());
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
