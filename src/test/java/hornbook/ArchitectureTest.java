package hornbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import hornbook.rulebook.compile.CompileRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rooms of the house are as the table in the contributors' guide has them. */
class ArchitectureTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter().importPath(Path.of("target/classes/hornbook"));

  /** What the build makes out of the rule files. */
  private static final Pattern ROW = Pattern.compile("(?m)^\\| `(\\w+)` \\| .* \\| ([^|]*) \\|$");

  private static final Pattern NAME = Pattern.compile("`(\\w+)`");

  /** Every room with the rooms it may use, in the order of the table. */
  private static Map<String, List<String>> rooms() throws IOException {
    Map<String, List<String>> rooms = new LinkedHashMap<>();
    ROW.matcher(Files.readString(Path.of("DEVELOPERS.md")))
        .results()
        .forEach(row -> rooms.put(row.group(1), allowed(row, List.copyOf(rooms.keySet()))));
    return rooms;
  }

  private static List<String> allowed(MatchResult row, List<String> above) {
    List<String> allowed = new ArrayList<>(List.of(row.group(1)));
    String may = row.group(2);
    if (may.equals("the above") || may.equals("all")) {
      allowed.addAll(above);
    } else {
      NAME.matcher(may).results().forEach(name -> allowed.add(name.group(1)));
    }
    return allowed;
  }

  @Test
  void the_table_names_every_room() throws IOException {
    List<String> found =
        PROGRAM.stream()
            .map(one -> one.getPackageName().split("\\."))
            .filter(parts -> parts.length > 1)
            .map(parts -> parts[1])
            .filter(room -> !room.equals("rules"))
            .distinct()
            .toList();
    assertThat(found).isNotEmpty();
    assertThat(rooms().keySet()).containsAll(found).last().isEqualTo("cli");
  }

  @TestFactory
  Stream<DynamicTest> no_room_depends_on_one_it_may_not_use() throws IOException {
    return rooms().entrySet().stream()
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room.getKey() + " uses " + room.getValue(),
                    () ->
                        classes()
                            .that()
                            .resideInAPackage(packages(room.getKey()))
                            .should()
                            .onlyDependOnClassesThat(
                                resideOutsideOfPackages("hornbook..")
                                    .or(
                                        resideInAnyPackage(
                                            room.getValue().stream()
                                                .map(ArchitectureTest::packages)
                                                .toArray(String[]::new))))
                            .allowEmptyShould(true)
                            .check(PROGRAM)));
  }

  private static String packages(String room) {
    return "hornbook." + room + "..";
  }

  private static final Pattern MAY_USE = Pattern.compile("(?s)<p>May use: (.*?)\\.\\s*\\*\\s*\\n");
  private static final Pattern CODE = Pattern.compile("\\{@code\\s+\\*?\\s*([\\w.]+)}");
  private static final Pattern BEGIN =
      Pattern.compile("<p>Begin with \\{@link\\s+\\*?\\s*([\\w.]+)}");
  private static final int MOST_FILES = 25;

  private static List<JavaPackage> innerRooms() {
    return PROGRAM.getPackage("hornbook").getSubpackagesInTree().stream()
        .filter(one -> !one.getClasses().isEmpty())
        .filter(one -> !one.getName().startsWith("hornbook.rules"))
        .toList();
  }

  private static Path folder(JavaPackage room) {
    return Path.of("src/main/java", room.getName().split("\\."));
  }

  @TestFactory
  Stream<DynamicTest> an_inner_room_holds_one_idea_and_uses_only_what_it_says() {
    return innerRooms().stream()
        .map(room -> DynamicTest.dynamicTest(room.getName(), () -> holdsWhatItSays(room)));
  }

  private static void holdsWhatItSays(JavaPackage room) throws IOException {
    Path info = folder(room).resolve("package-info.java");
    assertThat(info).as("every room says what it keeps").exists();
    String said = Files.readString(info);
    var may = MAY_USE.matcher(said);
    assertThat(may.find()).as("<p>May use: ... in " + info).isTrue();
    List<String> allowed = CODE.matcher(may.group(1)).results().map(one -> one.group(1)).toList();
    List<String> used =
        room.getClassDependenciesFromThisPackage().stream()
            .map(one -> one.getTargetClass().getBaseComponentType().getPackageName())
            .filter(name -> name.startsWith("hornbook.") && !name.equals(room.getName()))
            .map(name -> name.substring("hornbook.".length()))
            .distinct()
            .toList();
    assertThat(used).allMatch(name -> allowed.stream().anyMatch(one -> covers(one, name)));
    var begin = BEGIN.matcher(said);
    assertThat(begin.find()).as("<p>Begin with ... in " + info).isTrue();
    assertThat(PROGRAM.contain(begin.group(1))).as(begin.group(1)).isTrue();
    try (Stream<Path> files = Files.list(folder(room))) {
      assertThat(files.filter(one -> one.toString().endsWith(".java")).count())
          .as("files in " + room.getName())
          .isLessThanOrEqualTo(MOST_FILES + 1);
    }
  }

  /** A room named covers its inner rooms, but not from inside the same outer room. */
  private static boolean covers(String named, String used) {
    return used.equals(named) || !named.contains(".") && used.startsWith(named + ".");
  }

  @Test
  void no_two_inner_rooms_use_each_other() {
    slices().matching("hornbook.(**)").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void no_two_classes_share_a_name() {
    Map<String, List<String>> named = new LinkedHashMap<>();
    PROGRAM.stream()
        .filter(one -> !one.getPackageName().startsWith("hornbook.rules"))
        .filter(one -> one.isTopLevelClass() && !one.getSimpleName().equals("package-info"))
        .forEach(
            one ->
                named
                    .computeIfAbsent(one.getSimpleName(), name -> new ArrayList<>())
                    .add(one.getName()));
    assertThat(named.values()).isNotEmpty().allSatisfy(one -> assertThat(one).hasSize(1));
  }

  /** A constant leaves no trace in a class file: the sources are read. */
  @Test
  void only_the_unknown_number_is_not_a_number() throws IOException {
    Pattern nan = Pattern.compile("Double\\.NaN|Double\\.isNaN|\\.isNaN\\(\\)");
    List<Path> written = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        if (nan.matcher(Files.readString(file)).find()) {
          written.add(file.getParent());
        }
      }
    }
    assertThat(written).isNotEmpty().containsOnly(Path.of("src/main/java/hornbook/foot/number"));
  }

  @Test
  void only_the_rulebook_knows_the_rule_engine() {
    noClasses()
        .that(resideOutsideOfPackages("hornbook.rulebook.."))
        .should()
        .dependOnClassesThat(resideInAnyPackage("org.drools..", "org.kie.."))
        .check(PROGRAM);
  }

  @Test
  void only_the_command_line_knows_its_library() {
    noClasses()
        .that(resideOutsideOfPackages("hornbook.cli.."))
        .should()
        .dependOnClassesThat(resideInAPackage("picocli.."))
        .check(PROGRAM);
  }

  @Test
  void only_the_command_line_ends_the_program_and_writes_to_its_streams() {
    noClasses()
        .that(resideOutsideOfPackages("hornbook.cli.."))
        .and()
        .doNotBelongToAnyOf(CompileRules.class)
        .should()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .accessField(System.class, "in")
        .check(PROGRAM);
  }

  @Test
  void the_middle_of_the_program_knows_no_clock_no_files_and_no_chance() {
    noClasses()
        .that(
            resideInAnyPackage("hornbook.foot..", "hornbook.advice..", "hornbook.rulebook.fact.."))
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("java.nio.file..", "java.io..", "java.util.random.."))
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(java.util.Random.class, java.time.Clock.class)
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(Math.class, "random")
        .check(PROGRAM);
  }
}
