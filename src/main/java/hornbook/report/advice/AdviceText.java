package hornbook.report.advice;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.report.page.LineWrap;
import hornbook.report.page.Section;
import hornbook.report.page.TerminalStyle;
import hornbook.report.page.TextFit;
import hornbook.report.page.TextOptions;
import hornbook.report.page.TextSection;
import hornbook.report.words.Detail;
import hornbook.report.words.PageContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes advice as plain text for a terminal or a slip of paper. */
public final class AdviceText {
  /**
   * The most lines of a page about one foot; for several feet, so many for each. What a local
   * practice changes and adds comes on top.
   */
  public static final int BRIEF_LINES = 15;

  /** The most lines for a foot, from its name on; the head of the page and its last line aside. */
  public static final int USUAL_LINES = 30;

  private AdviceText() {}

  /** The whole page, each line ended by a newline and none wider than asked. */
  public static String render(Advice advice, TextOptions options) {
    TerminalStyle paint = options.colour() ? TerminalStyle.TERMINAL : TerminalStyle.NONE;
    PageContext told = PageContext.of(advice, options.units(), options.detail());
    List<String> lines = new ArrayList<>();
    List<String> head = head(told, options, paint);
    List<String> safety = LineWrap.lines(PageHead.SAFETY, options.width(), "", "");
    lines.addAll(head);
    boolean calls = PracticePart.below(advice);
    if (!calls) {
      lines.addAll(practice(told, options, paint));
    }
    int shared = head.size() + 1 + safety.size();
    for (FootAdvice foot : advice.feet()) {
      lines.addAll(
          options.detail() == Detail.BRIEF
              ? BriefText.lines(
                  told, foot, options.width(), paint, room(BRIEF_LINES, options) - shared)
              : foot(told, foot, options, paint, room(USUAL_LINES, options)));
    }
    if (calls) {
      lines.addAll(practice(told, options, paint));
    }
    lines.add("");
    if (options.detail() == Detail.FULL) {
      lines.addAll(LineWrap.lines(PageHead.rulebook(advice), options.width(), "", "  "));
    }
    lines.addAll(safety);
    return String.join("\n", lines) + "\n";
  }

  private static List<String> practice(PageContext told, TextOptions options, TerminalStyle paint) {
    List<String> lines = new ArrayList<>();
    for (Section practice : PracticePart.of(told)) {
      lines.addAll(new TextSection(practice, options.width(), false).lines(paint));
    }
    return lines;
  }

  /** On a narrow screen the same words take more lines. */
  private static int room(int lines, TextOptions options) {
    return lines * TextOptions.USUAL_WIDTH / Math.min(TextOptions.USUAL_WIDTH, options.width());
  }

  private static List<String> head(PageContext told, TextOptions options, TerminalStyle paint) {
    List<String> head = new ArrayList<>();
    LineWrap.lines("Hornbook advice: " + PageHead.title(told.advice()), options.width(), "", "  ")
        .forEach(line -> head.add(paint.bold(line)));
    String facts = PageHead.facts(told.advice(), told.phrases());
    if (!facts.isEmpty() && options.detail() != Detail.BRIEF) {
      head.addAll(LineWrap.lines(facts, options.width(), "", "  "));
    }
    return head;
  }

  private static List<String> foot(
      PageContext told, FootAdvice foot, TextOptions options, TerminalStyle paint, int budget) {
    Page page = Page.of(told, foot);
    List<TextSection> sections = new ArrayList<>();
    for (Section section : page.sections()) {
      sections.add(new TextSection(section, options.width(), sections.isEmpty()));
    }
    if (options.detail() == Detail.USUAL) {
      TextFit.within(budget - 2, sections);
    }
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(paint.bold("=== " + page.foot().toUpperCase(Locale.ROOT) + " ==="));
    sections.forEach(section -> lines.addAll(section.lines(paint)));
    return lines;
  }
}
