package hornbook.report.handbook;

import hornbook.report.handbook.Book.Block;
import hornbook.report.handbook.Book.Chapter;
import hornbook.report.handbook.Book.Row;
import hornbook.report.handbook.Book.Table;
import hornbook.report.rules.LimitLines;
import hornbook.report.rules.RuleList;
import hornbook.report.words.Citations;
import hornbook.report.words.CrossReferences;
import hornbook.report.words.LimitText;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The limits: a line under each rule that is held to them, and all of them in tables. */
final class HandbookLimits {
  private static final List<String> HEAD =
      List.of("Limit", "Value", "Where from", "Others say", "Safer", "Rules");

  private final Rulebook book;
  private final Phrases phrases;
  private final Citations citations;
  private final LimitText texts;
  private final CrossReferences uses;

  HandbookLimits(Rulebook book, Phrases phrases) {
    this.book = book;
    this.phrases = phrases;
    this.citations = new Citations(book);
    this.texts = new LimitText(phrases, citations);
    this.uses = new CrossReferences(book);
  }

  /** A limit under a rule: it leads to its row in the table. */
  RichText line(Limit limit) {
    RichText line =
        RichText.link(limit.label(), HandbookAnchors.limit(limit.id()))
            .plus(RuleWords.where(limit) + ": " + LimitLines.value(phrases, limit))
            .plus(" (" + texts.ground(limit) + ")");
    for (Limit.Dispute dispute : limit.disputes()) {
      line = line.plus("; but " + texts.other(limit, dispute));
    }
    return line.plus(".");
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Book.Paragraph(
            RichText.of(
                "Every number that rules and job sheets compare a foot with. "
                    + "Safer is the way to move a limit that makes the advice more careful: a local"
                    + " practice may move it that way without asking. A limit that calls the"
                    + " vet may move no other way.")));
    Set<String> placed = new LinkedHashSet<>();
    for (Topic topic : book.topics()) {
      Set<String> own = new LinkedHashSet<>();
      for (RuleEntry rule : RuleList.of(book, topic)) {
        rule.limits().filter(placed::add).forEach(own::add);
      }
      add(blocks, topic.title(), own);
    }
    Set<String> others = new LinkedHashSet<>();
    book.limits().stream().map(Limit::id).filter(placed::add).forEach(others::add);
    add(blocks, "Used by no rule: numbers for computing and job sheets", others);
    return new Chapter("limits", "Table of limits", blocks);
  }

  private void add(List<Block> blocks, String caption, Set<String> ids) {
    List<Row> rows = new ArrayList<>();
    for (String id : ids) {
      boolean first = true;
      for (Limit limit : uses.limits(id)) {
        rows.add(row(limit, first ? HandbookAnchors.limit(id) : null));
        first = false;
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Table(caption, HEAD, rows));
    }
  }

  private Row row(Limit limit, String anchor) {
    List<String> others =
        limit.disputes().stream().map(dispute -> texts.other(limit, dispute)).toList();
    RichText from =
        Source.work(limit.source())
            ? RichText.of(limit.basis().word() + ", ")
                .plusLink(citations.brief(limit.source()), HandbookAnchors.source(limit.source()))
            : RichText.of(limit.basis().word());
    return new Row(
        anchor,
        List.of(
            RichText.of(limit.label() + RuleWords.where(limit) + ", " + limit.id()),
            RichText.of(LimitLines.value(phrases, limit)),
            from.plus(": " + phrases.plain(citations.locator(limit))),
            RichText.of(others.isEmpty() ? "–" : String.join("; ", others)),
            RichText.of(
                switch (limit.safer()) {
                  case UP -> "higher";
                  case DOWN -> "lower";
                  case NEITHER -> "neither";
                }),
            HandbookAnchors.rules(uses.heldTo(limit.id()))));
  }
}
