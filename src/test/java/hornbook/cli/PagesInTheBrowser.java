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
import org.junit.jupiter.api.io.TempDir;

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

  private static void page(Path folder, HtmlPages.Page page) {
    String[] all =
        Stream.concat(page.command().stream(), Stream.of("--format", "html"))
            .toArray(String[]::new);
    Program.Run run = Program.run(all);
    assertThat(run.out()).as(page.name() + ": " + run.err()).startsWith("<!DOCTYPE html>");
    Written.file(folder, page.name() + ".html", run.out());
  }

  private static String exercise(String name) {
    return Program.exercise(name);
  }

  /** A book with two visits to one foot, the first with its job sheet. */
  private static Path book(Path folder) {
    Path book = folder.resolve("book");
    String torn = exercise("showjumper-torn-side");
    Path sheet = folder.resolve("sheet.json");
    String[] plan = {"plan", torn, "--technique", "glue-on", "--format", "json", "-o"};
    Program.run(Stream.concat(Stream.of(plan), Stream.of(sheet.toString())).toArray(String[]::new))
        .done();
    String[] add = {"record", "add", torn, "--chose", "glue-on", "--book", book.toString()};
    for (List<String> more :
        List.of(
            List.of("--plan", sheet.toString()),
            List.of("--set", "visit.date=2026-05-30", "--set", "feet[0].wall[2].height=18 mm"))) {
      Program.run(Stream.concat(Stream.of(add), more.stream()).toArray(String[]::new)).done();
    }
    return book;
  }

  /** A class of three, one of whom names no technique there is, and one answer of its own. */
  private static Path answers(Path folder) {
    Written.file(
        folder,
        "class.csv",
        "by,findings,vet,vetFor,technique,because,ruledOut,supports,cautions,ask\n"
            + "1,not-nailable,none,none,glue-on,N003;G005,nail-on: N003,none,chemicals,none\n"
            + "2,,none,,glueon,,,,,\n"
            + "3,low-heels,none,none,nail-on,K001,cast-wrap,none,fire,none\n");
    Written.file(
        folder,
        "one.yaml",
        "format: hornbook-answer/1\nfeet:\n  - limb: left-fore\n    technique: nail-on\n"
            + "    findings: [low-heels]\n    because: [N003]\n");
    return folder;
  }

  @Test
  void every_page_is_valid_and_open_to_everybody_and_fits(@TempDir Path beside) throws Exception {
    Path seen = folder("seen");
    List<HtmlPages.Page> pages = HtmlPages.all(book(beside), answers(beside));
    pages.forEach(page -> page(seen, page));
    Ended checked = run("node", "check.mjs", BROWSER, seen.toString());
    assertThat(checked.code()).as(checked.said()).isZero();
    assertThat(checked.said()).contains(pages.size() + " pages, 6 views each, 0 faults");
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
