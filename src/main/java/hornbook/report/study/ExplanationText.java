package hornbook.report.study;

import hornbook.advice.FootAdvice;
import hornbook.report.advice.PageHead;
import hornbook.report.advice.PracticePart;
import hornbook.report.page.LineWrap;
import hornbook.report.page.Section;
import hornbook.report.page.TerminalStyle;
import hornbook.report.page.TextOptions;
import hornbook.report.page.TextSection;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Phrases;
import hornbook.report.words.RecordedText;
import hornbook.rulebook.Rulebook;
import hornbook.study.explain.Answer;
import hornbook.study.explain.Explanation;
import hornbook.study.explain.RuleChain;
import java.util.ArrayList;
import java.util.List;

/** Writes why something is so, or why not, as plain text. */
public final class ExplanationText {
  /** The most lines for one foot, unless all is asked for. */
  public static final int LINES = 12;

  private static final int INDENT = 2;

  private final Rulebook book;
  private final Phrases phrases;
  private final TextOptions options;

  private ExplanationText(Rulebook book, TextOptions options) {
    this.book = book;
    this.phrases = new Phrases(book, options.units());
    this.options = options;
  }

  /** The explanations, one for each foot asked about. */
  public static String render(List<Explanation> all, Rulebook book, TextOptions options) {
    ExplanationText text = new ExplanationText(book, options);
    List<String> lines = new ArrayList<>();
    for (Explanation one : all) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      for (ExplanationRow row : text.rows(one)) {
        lines.addAll(row.lines(options.width()));
      }
    }
    List<FootAdvice> feet = all.stream().map(Explanation::foot).toList();
    for (Section practice : PracticePart.of(book, text.phrases, feet)) {
      lines.addAll(new TextSection(practice, options.width(), false).lines(TerminalStyle.NONE));
    }
    if (options.detail() == Detail.FULL) {
      lines.add("");
      lines.addAll(LineWrap.lines(PageHead.SAFETY, options.width(), "", ""));
    }
    return String.join("\n", lines) + "\n";
  }

  private List<ExplanationRow> rows(Explanation one) {
    boolean full = options.detail() == Detail.FULL;
    ChainRows chains = new ChainRows(book, one.foot(), phrases, full);
    List<ExplanationRow> rows = new ArrayList<>();
    rows.add(
        new ExplanationRow(0, 0, head(one.foot()) + new Headline(book, phrases).of(one) + "."));
    if (one.answer() instanceof Answer.Known known && !known.noted().isEmpty()) {
      rows.add(
          new ExplanationRow(
              INDENT, 0, new RecordedText(phrases.amounts()).line(known.noted(), full)));
    }
    if (full) {
      all(rows, one, chains);
      return rows;
    }
    if (!one.deciding().isEmpty()) {
      List<ExplanationRow> chain = chains.of(one.deciding().get(0), INDENT);
      chain.removeIf(row -> rows.stream().anyMatch(told -> told.text().equals(row.text())));
      rows.addAll(chain);
    }
    String more = more(one);
    if (!more.isEmpty()) {
      rows.add(new ExplanationRow(0, 0, more));
    }
    return ExplanationRow.within(LINES, rows, options.width());
  }

  private static String head(FootAdvice foot) {
    return FieldNames.of(foot.limb()) + ": ";
  }

  private void all(List<ExplanationRow> rows, Explanation one, ChainRows chains) {
    one.deciding().forEach(chain -> rows.addAll(chains.of(chain, INDENT)));
    heading(rows, "These also apply:", one.further());
    one.further().forEach(chain -> rows.addAll(chains.of(chain, INDENT)));
    heading(rows, "These stayed silent:", one.silent());
    one.silent().forEach(chain -> rows.addAll(chains.of(chain, INDENT)));
  }

  private static void heading(List<ExplanationRow> rows, String text, List<RuleChain> chains) {
    if (!chains.isEmpty()) {
      rows.add(new ExplanationRow(0, 0, text));
    }
  }

  /** What is not told, counted. */
  private static String more(Explanation one) {
    List<String> more = new ArrayList<>();
    int others = one.deciding().size() - 1;
    if (others > 0) {
      more.add(others + " more of the kind");
    }
    if (!one.further().isEmpty()) {
      more.add(one.further().size() + " that apply");
    }
    if (!one.silent().isEmpty()) {
      more.add(one.silent().size() + " silent");
    }
    return more.isEmpty() ? "" : "Also " + String.join(", ", more) + ": --full";
  }
}
