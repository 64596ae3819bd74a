package hornbook.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A page of every command that writes HTML, for the checks in a browser. */
final class HtmlPages {

  /**
   * One page.
   *
   * @param name of its file
   * @param command the words that name the command, then its arguments without the format
   */
  record Page(String name, List<String> command) {
    Page(String name, String... command) {
      this(name, List.of(command));
    }
  }

  private static final String CLUB = "club-foot-and-its-pair";

  private HtmlPages() {}

  private static String exercise(String name) {
    return Path.of("cases/exercises", name + ".yaml").toAbsolutePath().toString();
  }

  /**
   * All pages.
   *
   * @param book a daybook with two entries of Tansy
   * @param answers a folder with answers to the case {@code showjumper-torn-side}: {@code one.yaml}
   *     and {@code class.csv}
   */
  static List<Page> all(Path book, Path answers) {
    List<Page> pages = new ArrayList<>();
    for (String name :
        List.of("showjumper-torn-side", "quarter-crack-that-bleeds", "half-seen-foot")) {
      pages.add(new Page("assess-" + name, "assess", exercise(name)));
    }
    pages.add(
        new Page("assess-inches", "assess", exercise("heavy-horse-torn-hind"), "--units", "inch"));
    String pierced = exercise("nail-in-the-frog");
    pages.add(new Page("assess-for-vet", "assess", pierced, "--for", "vet"));
    pages.add(new Page("assess-for-owner", "assess", pierced, "--for", "owner"));
    for (String technique : List.of("nail-on-adapted", "cast-wrap", "prosthetic-wall")) {
      pages.add(
          new Page(
              "plan-" + technique,
              "plan",
              exercise("racehorse-both-sides-broken"),
              "--technique",
              technique,
              "--despite",
              "to see the <page>"));
    }
    pages.add(new Page("plan-vet-first", "plan", pierced, "--technique", "nail-on"));
    String at = book.toString();
    pages.add(new Page("record-show", "record", "show", "1", "--book", at));
    pages.add(new Page("record-history", "record", "history", "--horse", "Tansy", "--book", at));
    for (String reader : List.of("vet", "owner")) {
      pages.add(
          new Page(
              "record-export-" + reader, "record", "export", "1", "--for", reader, "--book", at));
    }
    pages.add(new Page("record-export", "record", "export", "1", "--anonymous", "--book", at));
    pages.add(new Page("rules-handbook", "rules", "handbook"));
    pages.add(new Page("rules-review", "rules", "review"));
    String torn = "showjumper-torn-side";
    pages.add(new Page("exercise-show", "exercise", "show", CLUB));
    pages.add(new Page("exercise-sheet", "exercise", "sheet", torn, "--without-key"));
    pages.add(new Page("exercise-sheets", "exercise", "sheet", torn, CLUB));
    pages.add(new Page("mark", "mark", torn, answers.resolve("class.csv").toString()));
    pages.add(new Page("critique", "critique", torn, answers.resolve("one.yaml").toString()));
    return pages;
  }
}
