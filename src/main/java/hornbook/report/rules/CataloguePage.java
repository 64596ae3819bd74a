package hornbook.report.rules;

import hornbook.assessment.quantity.Units;
import hornbook.report.page.PlainPage;
import hornbook.report.words.Citations;
import hornbook.report.words.CrossReferences;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.FindingKind;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Limit;
import java.util.List;
import java.util.Optional;

/** What the rule base holds beside its rules, one thing on a page, with the rules that use it. */
public final class CataloguePage {
  private final Rulebook book;
  private final CrossReferences uses;
  private final Citations citations;
  private final LimitLines limits;

  public CataloguePage(Rulebook book, Units units) {
    this.book = book;
    this.uses = new CrossReferences(book);
    this.citations = new Citations(book);
    this.limits = new LimitLines(new Phrases(book, units), citations);
  }

  /** The page of a limit, finding, technique, support or source; empty where none has this id. */
  public Optional<String> of(String id) {
    PlainPage page = new PlainPage();
    if (!uses.limits(id).isEmpty()) {
      limit(page, id);
    } else if (book.findings().containsKey(id)) {
      finding(page, book.findings().get(id));
    } else if (book.technique(id) != null) {
      subject(page, "A technique", book.technique(id));
    } else if (book.support(id) != null) {
      subject(page, "A support", book.support(id));
    } else if (book.sources().containsKey(id)) {
      source(page, book.sources().get(id));
    } else {
      return Optional.empty();
    }
    return Optional.of(page.text());
  }

  private void limit(PlainPage page, String id) {
    page.heading("A limit");
    for (Limit limit : uses.limits(id)) {
      limits.add(page, limit);
      page.hanging(4, 6, limit.source() + ": " + citations.full(limit.source()));
    }
    rules(page, "Rules that use it", uses.heldTo(id));
  }

  private void finding(PlainPage page, FindingKind finding) {
    page.heading("A finding" + (finding.defect() ? ", and a defect" : ""));
    page.hanging(2, 4, finding.id() + ": " + finding.label());
    if (finding.defect()) {
      page.paragraph(2, "The technique chosen has to deal with it.");
    }
    rules(page, "Found by", uses.finding(finding.id()));
    rules(page, "Built on by", uses.buildingOn(finding.id()));
  }

  private void subject(PlainPage page, String kind, NamedOption subject) {
    page.heading(kind).hanging(2, 4, subject.id() + ": " + subject.label());
    for (Bearing bearing : Bearing.values()) {
      rules(page, RuleWords.heading(bearing), uses.bearing(bearing, subject.id()));
    }
  }

  private void source(PlainPage page, Source source) {
    page.heading("A source").hanging(2, 4, source.key() + ": " + citations.full(source.key()));
    limits(page, "Limits that rest on it", uses.limitsFrom(source.key()));
    limits(page, "Limits it disputes", uses.limitsDisputedBy(source.key()));
    rules(page, "Rules that cite it", uses.citing(source.key()));
  }

  private void limits(PlainPage page, String heading, List<Limit> listed) {
    if (!listed.isEmpty()) {
      page.heading(heading);
      listed.forEach(limit -> limits.add(page, limit));
    }
  }

  private static void rules(PlainPage page, String heading, List<RuleEntry> listed) {
    if (!listed.isEmpty()) {
      page.heading(heading);
      listed.forEach(rule -> page.hanging(2, 8, rule.id() + "  " + rule.title()));
    }
  }
}
