package hornbook.report.rules;

import hornbook.assessment.quantity.Units;
import hornbook.report.page.PlainPage;
import hornbook.report.words.Citations;
import hornbook.report.words.CrossReferences;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One rule on one page: what it says and asks, why, its limits and works, and its case. */
public final class RulePage {
  private final Rulebook book;
  private final RuleWords words;
  private final CrossReferences uses;
  private final LimitLines limits;
  private final Citations citations;

  public RulePage(Rulebook book, Units units) {
    this.book = book;
    Phrases phrases = new Phrases(book, units);
    this.words = new RuleWords(book, phrases);
    this.uses = new CrossReferences(book);
    this.citations = new Citations(book);
    this.limits = new LimitLines(phrases, citations);
  }

  /**
   * The page.
   *
   * @param shown the case that fires the rule, or null where it is not at hand
   */
  public String text(RuleEntry rule, CaseShown shown) {
    PlainPage page = new PlainPage();
    page.heading(rule.id() + "  " + rule.title());
    page.paragraph(
        0,
        title(rule.topic())
            + "; basis: "
            + uses.weakest(rule).word()
            + "; since "
            + rule.since()
            + "; rules/"
            + rule.file()
            + ", line "
            + rule.line());
    page.heading("Says").paragraph(2, words.says(rule, rule.text().says()));
    if (rule.text().meanwhile() != null) {
      page.heading("Until the vet comes");
      page.paragraph(2, words.says(rule, rule.text().meanwhile()));
    }
    page.heading("Applies if all of this is known");
    words.conditions(rule).forEach(line -> page.hanging(2, 4, "- " + line));
    page.heading("Then").paragraph(2, words.outcome(rule));
    if (!rule.text().techniques().isEmpty()) {
      page.paragraph(
          2, "only while one of these is possible: " + words.labels(rule.text().techniques()));
    }
    page.heading("Why").paragraph(2, rule.why());
    page.heading("When silent").paragraph(2, rule.silent());
    addLimits(page, rule);
    addSources(page, rule);
    if (shown != null) {
      page.heading("Example case").paragraph(2, shown.title());
      page.asIs(2, "hornbook assess " + shown.file());
      page.paragraph(2, "Silent after one change:");
      page.asIs(2, "--set \"" + shown.nearMiss() + "\"");
    }
    return page.text();
  }

  private void addLimits(PlainPage page, RuleEntry rule) {
    List<Limit> bound = new ArrayList<>();
    rule.limits().forEach(id -> bound.addAll(uses.limits(id)));
    if (!bound.isEmpty()) {
      page.heading("Limits");
      bound.forEach(limit -> limits.add(page, limit));
    }
  }

  private void addSources(PlainPage page, RuleEntry rule) {
    Set<String> keys = new LinkedHashSet<>(rule.text().sources());
    rule.limits().forEach(id -> uses.limits(id).forEach(limit -> keys.add(limit.source())));
    page.heading("Sources");
    keys.forEach(key -> page.hanging(2, 4, key + ": " + citations.full(key)));
  }

  private String title(String topic) {
    for (Topic one : book.topics()) {
      if (one.id().equals(topic)) {
        return one.title();
      }
    }
    return topic;
  }
}
