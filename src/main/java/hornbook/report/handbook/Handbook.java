package hornbook.report.handbook;

import hornbook.assessment.quantity.Units;
import hornbook.report.advice.PageHead;
import hornbook.report.advice.PracticePart;
import hornbook.report.handbook.Book.Chapter;
import hornbook.report.words.Numbers;
import hornbook.report.words.Phrases;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.study.rulecase.FiredCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The whole rule base as one book for people who work with feet and not with programs. */
public final class Handbook {
  private Handbook() {}

  /**
   * As one page for a browser, to read and to print.
   *
   * @param cases the cases of the rules, run; a rule without one is told without
   */
  public static String html(Rulebook book, Map<String, FiredCase> cases, Units units) {
    return BookHtml.render(of(book, cases, units));
  }

  /** The same as Markdown. */
  public static String markdown(Rulebook book, Map<String, FiredCase> cases, Units units) {
    return BookMarkdown.render(of(book, cases, units));
  }

  static Book of(Rulebook book, Map<String, FiredCase> cases, Units units) {
    Phrases phrases = new Phrases(book, units);
    HandbookLists lists = new HandbookLists(book, phrases);
    HandbookIndex index = new HandbookIndex(book, phrases);
    List<Chapter> chapters = new ArrayList<>();
    chapters.add(new HandbookGuide(book).chapter());
    if (book.practice() != null) {
      chapters.add(HandbookGuide.practice(PracticePart.whole(book, phrases)));
    }
    chapters.addAll(new HandbookRules(book, cases, phrases).chapters());
    chapters.add(lists.techniques());
    chapters.add(lists.findings());
    chapters.add(lists.readings());
    chapters.add(new HandbookLimits(book, phrases).chapter());
    chapters.add(lists.sheets());
    chapters.add(lists.sources());
    chapters.add(index.index());
    chapters.add(index.glossary());
    return new Book("Hornbook: the rules of the trade it uses", opening(book), chapters);
  }

  private static List<RichText> opening(Rulebook book) {
    long works = book.sources().keySet().stream().filter(Source::work).count();
    List<RichText> opening = new ArrayList<>();
    opening.add(
        RichText.of(
            "Rule base "
                + book.version()
                + ": "
                + Numbers.counted(book.rules().size(), "rule")
                + ", "
                + Numbers.counted(book.limits().size(), "limit")
                + ", "
                + Numbers.counted((int) works, "work")
                + " cited."));
    if (book.practice() != null) {
      opening.add(RichText.of("As the local practice of " + book.practice().name() + " has it."));
    }
    opening.add(RichText.strong(PageHead.SAFETY));
    opening.add(
        RichText.of("Written by the program from the rules it runs, " + book.digest() + "."));
    return opening;
  }
}
