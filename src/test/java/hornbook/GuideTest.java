package hornbook;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.read.RulebookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The contributors' guide is short, and names nothing that does not exist. */
class GuideTest {
  private static final Path GUIDE = Path.of("DEVELOPERS.md");
  private static final Path RULES = Path.of("rules/README.md");
  private static final Path JAVA = Path.of("src/main/java/hornbook");
  private static final int TWO_PAGES = 160;

  /** The class that the recipe for a command has its reader write. */
  private static final String TO_BE_WRITTEN = "FeetCommand";

  @Test
  void the_guide_fits_on_two_pages() throws IOException {
    List<String> lines = Files.readAllLines(GUIDE);
    assertThat(lines).hasSizeLessThanOrEqualTo(TWO_PAGES);
    assertThat(lines)
        .filteredOn(line -> !line.startsWith("|"))
        .allMatch(line -> line.length() < 126);
  }

  @Test
  void every_recipe_takes_fewer_than_ten_commands() throws IOException {
    List<String> recipes =
        found("(?ms)^## Add a (?:rule|field|command)$.*?^```\\n(.*?)^```", Files.readString(GUIDE));
    assertThat(recipes).hasSize(3);
    assertThat(recipes).allMatch(recipe -> recipe.lines().count() < 10);
  }

  @Test
  void every_class_it_names_exists() throws IOException {
    Set<String> classes = classes();
    Set<String> named = new TreeSet<>();
    for (Path page : List.of(GUIDE, RULES)) {
      String text = Files.readString(page);
      named.addAll(found("`(?:[a-z]+\\.)*([A-Z][a-z]+[A-Z]\\w+)`", text));
      named.addAll(found("/([A-Z]\\w+)\\.java", text));
      for (String tests : found("-D(?:it\\.)?test=(\\S+)", text)) {
        named.addAll(Arrays.asList(tests.split(",")));
      }
    }
    for (Path page : files(JAVA, "package-info.java")) {
      named.addAll(found("\\{@code\\s+(?:\\* )?([A-Z][a-z]+[A-Z]\\w+)}", Files.readString(page)));
    }
    named.remove(TO_BE_WRITTEN);
    assertThat(named).hasSizeGreaterThan(30).isSubsetOf(classes);
  }

  @Test
  void every_package_and_file_it_names_exists() throws IOException {
    String guide = Files.readString(GUIDE);
    for (String name : found("`(\\w+\\.(?!yaml`)[a-z]+)`", guide)) {
      Path room = JAVA.resolve(name.substring(0, name.indexOf('.')));
      if (Files.isDirectory(room)) {
        assertThat(JAVA.resolve(name.replace('.', '/'))).isDirectory();
      }
    }
    for (String name : found("[`( ]((?:src|rules|cases)/[\\w./-]+\\w)", guide)) {
      if (!name.contains(TO_BE_WRITTEN)) {
        assertThat(Path.of(name)).exists();
      }
    }
  }

  @Test
  void every_command_it_names_exists() throws IOException {
    Set<String> classes = classes();
    for (Path page : List.of(GUIDE, RULES)) {
      for (String command : found("hornbook ((?:rules )?[a-z]+)\\b", Files.readString(page))) {
        String name =
            Arrays.stream(command.split(" "))
                .map(word -> word.substring(0, 1).toUpperCase() + word.substring(1))
                .collect(Collectors.joining("", "", "Command"));
        assertThat(name)
            .as(command)
            .matches(one -> one.equals(TO_BE_WRITTEN) || classes.contains(one));
      }
    }
  }

  @Test
  void all_units_of_limits_are_told(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("rulebook.yaml"), "version: 1.0.0\n");
    Files.createDirectories(folder.resolve("a"));
    Files.writeString(folder.resolve("a/limits.yaml"), "- {id: a.b, unit: furlong}\n");
    String cure =
        RulebookReader.inspect(folder).faults().stream()
            .filter(fault -> fault.says().contains("furlong"))
            .map(RuleFault::cure)
            .findFirst()
            .orElseThrow();
    List<String> units =
        List.of(cure.substring(cure.indexOf('[') + 1, cure.length() - 1).split(", "));
    String told = found("(?s)Units: (.*?)\\n\\n", Files.readString(RULES)).get(0);
    assertThat(found("`([^`]+)`", told.replace("`\"\"`", "")))
        .containsExactlyInAnyOrderElementsOf(
            units.stream().filter(unit -> !unit.isEmpty()).toList());
  }

  @Test
  void all_readings_are_told() throws IOException {
    String told = found("(?s)Computed readings: (.*?)\\n\\n", Files.readString(RULES)).get(0);
    assertThat(found("`([^`]+)`", told))
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(ReadingKind.values()).map(ReadingKind::id).toList());
  }

  @Test
  void every_key_of_limits_texts_and_cases_is_told() throws IOException {
    String told = Files.readString(RULES);
    Set<String> keys = new TreeSet<>();
    for (Path file : files(Path.of("rules"), "limits.yaml")) {
      keys.addAll(found("(?m)^[- ] ([a-z]+):", Files.readString(file)));
    }
    for (Path file : files(Path.of("cases/rules"), ".yaml")) {
      keys.addAll(found("(?m)^([a-zA-Z]+):", Files.readString(file)));
    }
    for (Path file : files(Path.of("rules/referral"), ".yaml")) {
      keys.addAll(found("(?m)^  ([a-z]+):", Files.readString(file)));
    }
    assertThat(keys).contains("says", "reserves", "nearMiss", "expects", "step");
    assertThat(keys).allMatch(key -> told.contains(key + ":"));
    assertThat(told)
        .contains("silent:", "with:", "uses: computing", "dissents:", "expects: silent");
  }

  private static Set<String> classes() throws IOException {
    Set<String> classes = new TreeSet<>();
    for (Path file : files(Path.of("src"), ".java")) {
      classes.add(file.getFileName().toString().replace(".java", ""));
    }
    return classes;
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static List<String> found(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map((MatchResult one) -> one.group(1))
        .toList();
  }
}
