package hornbook.report.advice;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.words.Detail;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;

/** Writes the whole of the advice as Markdown, for a record or a letter. */
public final class AdviceMarkdown {
  /** Whether a sign of ASCII is a mark. */
  private static final boolean[] MARK = new boolean[128];

  static {
    "\\`*_[]<>#|~&".chars().forEach(c -> MARK[c] = true);
  }

  private AdviceMarkdown() {}

  /** Everything {@link Detail#FULL} tells. */
  public static String render(Advice advice, Units units) {
    return render(advice, units, Detail.FULL);
  }

  /** As much as asked for. */
  public static String render(Advice advice, Units units, Detail detail) {
    PageContext told = PageContext.of(advice, units, detail);
    StringBuilder page = new StringBuilder();
    page.append("# Hornbook advice: ").append(escaped(PageHead.title(advice))).append("\n\n");
    String facts = PageHead.facts(advice, told.phrases());
    if (!facts.isEmpty()) {
      page.append(escaped(facts)).append("\n\n");
    }
    page.append("> ").append(escaped(PageHead.SAFETY)).append('\n');
    boolean calls = PracticePart.below(advice);
    if (!calls) {
      practice(told, page);
    }
    for (FootAdvice foot : advice.feet()) {
      foot(told, foot, page);
    }
    if (calls) {
      practice(told, page);
    }
    return page.append('\n').append(escaped(PageHead.rulebook(advice))).append('\n').toString();
  }

  private static void practice(PageContext told, StringBuilder page) {
    PracticePart.of(told).forEach(practice -> section(practice, "## ", page));
  }

  private static void foot(PageContext told, FootAdvice foot, StringBuilder page) {
    Page sections = Page.of(told, foot);
    page.append("\n## ").append(Sentence.capital(sections.foot())).append('\n');
    sections.sections().forEach(section -> section(section, "### ", page));
  }

  private static void section(Section section, String mark, StringBuilder page) {
    page.append('\n').append(mark).append(escaped(section.heading())).append("\n\n");
    section.items().forEach(item -> item(item, page));
  }

  private static void item(Item item, StringBuilder page) {
    StringBuilder line = new StringBuilder("- ");
    if (!item.lead().isEmpty()) {
      String lead = Sentence.capital(item.lead()) + (item.text().isEmpty() ? "" : ":");
      line.append("**").append(escaped(lead)).append("** ");
    }
    Item rest = new Item("", item.text(), item.notes(), item.rule());
    String text = item.lead().isEmpty() ? Sentence.capital(rest.line()) : rest.line();
    line.append(escaped(text));
    page.append(line.toString().stripTrailing()).append('\n');
    item.notes().forEach(note -> page.append("  - ").append(escaped(note)).append('\n'));
  }

  /** Text in which nothing is taken for a mark. */
  public static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < MARK.length && MARK[c]) {
        escaped.append('\\');
      }
      escaped.append(c);
    }
    return escaped.toString();
  }
}
