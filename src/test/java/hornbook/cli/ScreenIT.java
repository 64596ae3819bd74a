package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pages as wide as the screen, and what is longer than it in a pager. */
class ScreenIT {
  private static final String TORN = exercise("showjumper-torn-side");
  private static final int ROWS = 50;

  @TempDir Path folder;

  static Stream<List<String>> pages() {
    return Stream.of(
            "assess FILE",
            "assess FILE --brief",
            "assess FILE --full",
            "plan FILE --technique glue-on",
            "why-not FILE nail-on",
            "contrast FILE --most 3",
            "rules list",
            "rules show N003",
            "exercise show showjumper-torn-side",
            "plan --help",
            "record --help")
        .map(line -> List.of(line.replace("FILE", TORN).split(" ")));
  }

  /** Only a command to copy is never broken. */
  @ParameterizedTest
  @MethodSource("pages")
  void no_line_is_wider_than_a_narrow_screen(List<String> command) {
    String page = wide(40, command);
    assertThat(page.lines().filter(line -> !line.matches(".*(hornbook |--set ).*")))
        .isNotEmpty()
        .allMatch(line -> line.codePointCount(0, line.length()) <= 40);
  }

  @Test
  void a_wide_screen_is_used_up_to_what_an_eye_can_follow() {
    List<String> command = List.of("assess", TORN, "--full");
    assertThat(widest(wide(100, command))).isBetween(90, 100);
    String broad = wide(120, command);
    assertThat(wide(300, command)).isEqualTo(broad);
    assertThat(wide(5, command)).isEqualTo(wide(40, command));
    assertThat(widest(broad)).isBetween(110, 120);
  }

  @Test
  void without_a_screen_pages_are_eighty_columns_wide() {
    assertThat(widest(Program.once("assess", TORN, "--full").done().out())).isBetween(75, 80);
    assertThat(Program.here().environment("COLUMNS", "many").with("assess", TORN).done().out())
        .isEqualTo(Program.once("assess", TORN).done().out());
  }

  @Test
  void the_screen_tells_how_wide_it_is_and_a_file_is_as_wide_as_ever() throws Exception {
    try (Typist typist = Typist.at(folder, 46, Map.of(), "assess", "--no-pager", TORN)) {
      typist.endsWith(0);
      List<String> lines = plain(typist.screen()).lines().toList();
      assertThat(lines).anyMatch(line -> line.length() > 40).allMatch(line -> line.length() <= 46);
    }
    try (Typist typist = Typist.at(folder, 46, Map.of(), "assess", TORN, "-o", "page.txt")) {
      typist.endsWith(0);
    }
    assertThat(folder.resolve("page.txt")).hasContent(Program.once("assess", TORN).done().out());
  }

  @Test
  void a_page_longer_than_the_screen_goes_to_the_pager_and_a_short_one_does_not() throws Exception {
    Map<String, String> pager = Map.of("PAGER", pager("sed 's/^/PAGED /'"));
    try (Typist typist = Typist.at(folder, 80, pager, "rules", "list")) {
      typist.endsWith(0);
      assertThat(plain(typist.screen()).split("\nPAGED ")).hasSizeGreaterThan(ROWS);
    }
    for (String[] command :
        List.of(
            new String[] {"assess", "--brief", TORN},
            new String[] {"rules", "list", "--no-pager"},
            new String[] {"--no-pager", "rules", "list"})) {
      try (Typist typist = Typist.at(folder, 80, pager, command)) {
        typist.endsWith(0);
        assertThat(typist.screen()).as(Arrays.toString(command)).doesNotContain("PAGED");
      }
    }
  }

  @Test
  void colours_are_as_without_a_pager() throws Exception {
    String[] command = {"assess", "--full", TORN};
    Map<String, String> pager = Map.of("PAGER", pager("cat"));
    try (Typist typist = Typist.at(folder, 80, pager, command)) {
      typist.endsWith(0);
      assertThat(typist.screen()).contains("\u001b[1m");
    }
    Map<String, String> plain = Map.of("PAGER", pager("cat"), "NO_COLOR", "1");
    try (Typist typist = Typist.at(folder, 80, plain, command)) {
      typist.endsWith(0);
      assertThat(typist.screen()).doesNotContain("\u001b[").contains("FIRST CHOICE");
    }
  }

  /** The pager reads one line and goes; the exit code is that of the command. */
  @Test
  void a_pager_left_early_ends_quietly_with_the_code_of_the_command() throws Exception {
    String many = exercise("quarter-crack-that-bleeds");
    String[] command = {"assess", "--full", "--fail-on", "today", many, many, many};
    for (String leaves : List.of("head -n 1", "true")) {
      Map<String, String> pager = Map.of("PAGER", pager(leaves));
      try (Typist typist = Typist.at(folder, 80, pager, command)) {
        typist.endsWith(1);
        assertThat(typist.screen().lines().count()).isLessThan(5);
        assertThat(typist.screen()).doesNotContain("hornbook:", "Exception");
      }
    }
  }

  @Test
  void where_there_is_no_such_pager_nothing_is_lost() throws Exception {
    Map<String, String> pager = Map.of("PAGER", "no-such-pager -x", "PATH", pathWithoutLess());
    try (Typist typist = Typist.at(folder, 80, pager, "rules", "list")) {
      typist.endsWith(0);
      assertThat(plain(typist.screen()))
          .contains(Program.once("rules", "list").done().out().strip());
    }
  }

  /** A folder of links to all the launcher needs. */
  private String pathWithoutLess() throws IOException {
    Path tools = Files.createDirectory(folder.resolve("tools"));
    for (String tool : List.of("sh", "stty", "readlink", "sed", "java")) {
      Path found =
          Stream.of(System.getenv("PATH").split(":"))
              .map(where -> Path.of(where, tool))
              .filter(Files::isExecutable)
              .findFirst()
              .orElseThrow();
      Files.createSymbolicLink(tools.resolve(tool), found);
    }
    return tools.toString();
  }

  private String pager(String does) throws IOException {
    Path script = folder.resolve("pager-" + does.split(" ")[0]);
    Files.writeString(script, "#!/bin/sh\n" + does + "\n");
    assertThat(script.toFile().setExecutable(true)).isTrue();
    return script.toString();
  }

  private static String wide(int columns, List<String> command) {
    return Program.here()
        .environment("COLUMNS", Integer.toString(columns))
        .with(command.toArray(String[]::new))
        .done()
        .out();
  }

  private static int widest(String page) {
    return page.lines().mapToInt(line -> line.codePointCount(0, line.length())).max().orElse(0);
  }

  private static String plain(String screen) {
    return screen.replaceAll("\u001b\\[[0-9;]*m", "").replace("\r", "");
  }
}
