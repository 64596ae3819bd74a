package hornbook.report.rules;

import hornbook.assessment.quantity.Units;
import hornbook.report.page.PlainPage;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.coverage.Coverage;
import hornbook.study.coverage.LimitCover;
import hornbook.study.coverage.RuleCover;
import java.util.ArrayList;
import java.util.List;

/** Tells in plain text how far cases put a rule base to the test. */
public final class RulesCoverageText {
  private final Coverage coverage;
  private final Rulebook book;
  private final RuleWords words;
  private final Phrases phrases;
  private final PlainPage page = new PlainPage();

  private RulesCoverageText(Coverage coverage, Rulebook book) {
    this.coverage = coverage;
    this.book = book;
    this.phrases = new Phrases(book, Units.MM);
    this.words = new RuleWords(book, phrases);
  }

  /**
   * The page.
   *
   * @param all whether every rule and limit is told of, or only where something is lacking
   */
  public static String render(Coverage coverage, Rulebook book, boolean all) {
    RulesCoverageText text = new RulesCoverageText(coverage, book);
    text.page.heading(
        "What the cases test, version " + book.version() + ", " + coverage.feet() + " feet run");
    text.summary();
    text.holes();
    if (all) {
      text.all();
    }
    return text.page.text();
  }

  private void summary() {
    List<RuleCover> rules = coverage.rules();
    List<RuleCover.Seen> conditions =
        rules.stream().flatMap(rule -> rule.conditions().stream()).toList();
    List<LimitCover> limits = coverage.limits();
    share("rules fired", rules.stream().filter(rule -> rule.fired() > 0).count(), rules.size());
    share("rules silent", rules.stream().filter(rule -> rule.silent() > 0).count(), rules.size());
    share(
        "conditions seen true and false",
        conditions.stream().filter(RuleCover.Seen::whole).count(),
        conditions.size());
    share(
        "limits met at, under and over",
        limits.stream().filter(LimitCover::whole).count(),
        limits.size());
    long others = book.limits().size() - limits.size();
    page.paragraph(
        2,
        others + " more limits are for the computing and the job sheets: no rule is held to them.");
  }

  private void share(String what, long whole, int all) {
    page.paragraph(2, "%-32s%d of %d".formatted(what, whole, all));
  }

  private void holes() {
    if (coverage.whole()) {
      page.heading("No hole found.");
      return;
    }
    page.heading("HOLES");
    for (RuleCover rule : coverage.rules()) {
      if (!rule.whole()) {
        page.hanging(2, 8, rule.rule().id() + "  " + rule.rule().title());
        lacking(rule).forEach(line -> page.hanging(8, 10, line));
      }
    }
    for (LimitCover limit : coverage.limits()) {
      if (!limit.whole()) {
        page.hanging(2, 8, named(limit.limit()));
        limit.holes().forEach(side -> page.hanging(8, 10, "no case " + side + " it"));
      }
    }
  }

  private List<String> lacking(RuleCover rule) {
    List<String> lacking = new ArrayList<>();
    if (rule.fired() == 0) {
      lacking.add("no case makes it apply");
    }
    if (rule.silent() == 0) {
      lacking.add("no case keeps it silent");
    }
    List<String> asked = words.conditions(rule.rule());
    for (int at = 0; at < asked.size(); at++) {
      RuleCover.Seen seen = rule.conditions().get(at);
      if (!seen.whole()) {
        lacking.add("never seen " + (seen.yes() == 0 ? "true: " : "false: ") + asked.get(at));
      }
    }
    return lacking;
  }

  private String named(Limit limit) {
    return limit.id() + RuleWords.where(limit) + ", " + limit.label() + ": " + phrases.of(limit);
  }

  private void all() {
    page.heading("EVERY RULE: feet on which it fired, and was silent");
    page.paragraph(2, "of each condition: how often true, how often false");
    for (RuleCover rule : coverage.rules()) {
      page.hanging(
          2,
          8,
          rule.rule().id()
              + "  "
              + rule.rule().title()
              + ": "
              + rule.fired()
              + ", "
              + rule.silent());
      List<String> asked = words.conditions(rule.rule());
      for (int at = 0; at < asked.size(); at++) {
        RuleCover.Seen seen = rule.conditions().get(at);
        page.hanging(8, 10, asked.get(at) + ": " + seen.yes() + ", " + seen.no());
      }
    }
    page.heading("EVERY LIMIT: readings under it, at it, over it");
    for (LimitCover limit : coverage.limits()) {
      page.hanging(
          2,
          8,
          named(limit.limit()) + ": " + limit.under() + ", " + limit.at() + ", " + limit.over());
    }
  }
}
