package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The pages in a browser, held to a validator of HTML and a checker of accessibility, on a
 * telephone, a desk and two papers, by day and by night. Needs Node and Chromium: run by {@code mvn
 * -Ppages verify}. Screenshots are left in {@code target/pages/seen}.
 */
class PagesInTheBrowser {
  private static final Path TOOLS = Path.of("src/test/pages");
  private static final Path PAGES = Path.of(System.getProperty("hornbook.pages"));
  private static final String BROWSER = System.getProperty("hornbook.browser");

  /** What a run of another program said, and how it ended. */
  private record Ended(int code, String said) {}

  private static Ended run(String... command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command).directory(PAGES.toFile()).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), said);
  }

  @BeforeAll
  static void tools() throws Exception {
    Files.createDirectories(PAGES);
    try (Stream<Path> files = Files.list(TOOLS)) {
      for (Path file : files.toList()) {
        Files.copy(file, PAGES.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
    Ended installed = run("npm", "ci", "--no-audit", "--no-fund", "--ignore-scripts");
    assertThat(installed.code()).as(installed.said()).isZero();
  }

  private static Path folder(String name) throws IOException {
    Path folder = PAGES.resolve(name);
    if (Files.exists(folder)) {
      try (Stream<Path> old = Files.list(folder)) {
        for (Path file : old.toList()) {
          Files.delete(file);
        }
      }
    }
    return Files.createDirectories(folder);
  }

  private static void page(Path folder, String name, String... command) {
    String[] all =
        Stream.concat(Stream.of(command), Stream.of("--format", "html")).toArray(String[]::new);
    Program.Run run = Program.run(all);
    assertThat(run.out()).as(name + ": " + run.err()).startsWith("<!DOCTYPE html>");
    Written.file(folder, name + ".html", run.out());
  }

  private static String exercise(String name) {
    return Program.EXERCISES.resolve(name + ".yaml").toString();
  }

  @Test
  void every_page_is_valid_and_open_to_everybody_and_fits() throws Exception {
    Path seen = folder("seen");
    for (String name :
        List.of("showjumper-torn-side", "quarter-crack-that-bleeds", "half-seen-foot")) {

      page(seen, "assess-" + name, "assess", exercise(name));
    }
    page(seen, "assess-inches", "assess", exercise("heavy-horse-torn-hind"), "--units", "inch");
    for (String technique : List.of("nail-on-adapted", "cast-wrap", "prosthetic-wall")) {
      page(
          seen,
          "plan-" + technique,
          "plan",
          exercise("racehorse-both-sides-broken"),
          "--technique",
          technique,
          "--despite",
          "to see the <page>");
    }
    page(seen, "plan-vet-first", "plan", exercise("nail-in-the-frog"), "--technique", "nail-on");
    String book = Files.createTempDirectory("book").resolve("book").toString();
    Program.run(
        "record", "add", exercise("showjumper-torn-side"), "--chose", "glue-on", "--book", book);
    page(seen, "record-show", "record", "show", "1", "--book", book);
    classroom(seen);
    Ended checked = run("node", "check.mjs", BROWSER, seen.toString());
    assertThat(checked.code()).as(checked.said()).isZero();
    assertThat(checked.said()).contains("14 pages, 6 views each, 0 faults");
  }

  private static void classroom(Path seen) throws IOException {
    String jumper = "showjumper-torn-side";
    page(seen, "class-show", "exercise", "show", "club-foot-and-its-pair");
    page(seen, "class-sheet", "exercise", "sheet", jumper, "--without-key");
    page(seen, "class-sheets", "exercise", "sheet", jumper, "club-foot-and-its-pair");
    Path folder = Files.createTempDirectory("class");
    String answers =
        "by,findings,vet,vetFor,technique,because,ruledOut,supports,cautions,ask\n"
            + "1,not-nailable,none,none,glue-on,N003;G005,nail-on: N003,none,chemicals,none\n"
            + "2,,none,,glueon,,,,,\n"
            + "3,low-heels,none,none,nail-on,K001,cast-wrap,none,fire,none\n";
    page(seen, "class-marks", "mark", jumper, Written.file(folder, "class.csv", answers));
    String answer =
        "format: hornbook-answer/1\nfeet:\n  - limb: left-fore\n    technique: nail-on\n"
            + "    findings: [low-heels]\n    because: [N003]\n";
    page(seen, "class-critique", "critique", jumper, Written.file(folder, "one.yaml", answer));
  }

  @Test
  void the_check_finds_what_is_wrong() throws Exception {
    Path wrong = folder("wrong");
    String page = Program.run("assess", exercise("foal-trim"), "--format", "html").done().out();
    Written.file(
        wrong,
        "wrong.html",
        page.replace(
            "</main>",
            "<p id=\"twice\"></p><p id=\"twice\" style=\"color:#ccc\">pale</p><img"
                + " src=\"data:,\"/><pre style=\"width: 2000px\">wide</pre></main>"));
    Ended checked = run("node", "check.mjs", BROWSER, wrong.toString());
    assertThat(checked.code()).isEqualTo(1);
    assertThat(checked.said())
        .contains("no-dup-id", "no-inline-style", "color-contrast", "image-alt", "wide in 390");
  }
}
