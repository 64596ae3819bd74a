package hornbook.report.handbook;

import hornbook.report.handbook.Book.Block;
import hornbook.report.handbook.Book.Chapter;
import hornbook.report.handbook.Book.Lines;
import hornbook.report.handbook.Book.Paragraph;
import hornbook.report.handbook.Book.Word;
import hornbook.report.handbook.Book.Words;
import hornbook.report.page.Section;
import hornbook.report.words.Sentence;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;

/** The first chapters: how to read the rest, and what a local practice changes in it. */
final class HandbookGuide {
  private final Rulebook book;

  HandbookGuide(Rulebook book) {
    this.book = book;
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    say(
        blocks,
        "Somebody writes down what was seen and measured of a foot. The rules in this book are"
            + " compared with that, one by one, and everything Hornbook advises comes from them: there"
            + " is no score and nothing hidden. You need no program to read it. If you work with"
            + " feet and think that a rule or a number is wrong, this book is there for you to"
            + " say so.");
    heading(blocks, "a-rule", "What stands under a rule");
    words(
        blocks,
        "Its number and title",
        "Quote the number when you object to the rule.",
        "Its sentence",
        "What it tells the farrier. What stands in italics is filled in for the foot.",
        "Then",
        "What follows: it names a finding, calls the vet, gives a reason for or against a technique, or warns.",
        "Asks",
        "What has to be known, all of it together, before the rule says anything. Found means that another rule has found it.",
        "Why",
        "The reason of the trade behind it.",
        "When silent",
        "On which feet the rule says nothing.",
        "Limits",
        "The numbers it uses, each with its source and with authors who disagree.",
        "Fires on",
        "A made-up foot on which the rule speaks; where a number or a word is filled in, what it then says. Stretches of wall are measured back along the ground edge from the middle of the toe, on the inner and on the outer side.",
        "Near-miss",
        "The same foot with one thing changed, on which it is silent.",
        "Ground",
        "How good the ground is, and the works it rests on.");
    heading(blocks, "ground", "How good the ground is");
    words(
        blocks,
        "published",
        "A work that is named says it, from measuring, trial or long teaching.",
        "quoted",
        "A work says that another says it. The first was not seen.",
        "derived",
        "Worked out from what is published.",
        "practice",
        "Common practice of the trade, with no work behind it.",
        "memory",
        "The authors believe it. Check it before you rely on it.");
    say(
        blocks,
        "What rests on several things is no better than the weakest of them. A number that no book"
            + " gives is never passed off as published.");
    heading(blocks, "unknown", "What nobody looked at");
    say(
        blocks,
        "Not looked at is not the same as normal. A rule uses only what is known. What is not known and"
            + " could change the advice is asked for; what could call the vet comes first."
            + " Until that is answered the advice is called provisional.");
    heading(blocks, "verdicts", "From reasons to advice");
    say(
        blocks,
        "Rules only give reasons. What becomes of a technique is settled in this order; the first"
            + " that holds counts:");
    blocks.add(
        new Lines(
            true,
            lines(
                "A rule rules it out: ruled out.",
                "The vet is called for now: ruled out until the vet has seen the foot; only with"
                    + " the vet where a vet already directs the case.",
                "No reason for it: not indicated.",
                "The vet is called for today, or the vet has to settle something first: only with"
                    + " the vet.",
                "Otherwise: workable.",
                "Of the workable ones that deal with every defect found, those with nothing"
                    + " against them come before the others. The one that interferes least, by the"
                    + " order below, is the first choice. There may be none.")));
    say(
        blocks,
        "What the farrier has to put right first changes no verdict: it is printed as what comes"
            + " first. First aid may be done while the vet is awaited: calls do not hold it back,"
            + " and everything else on the foot waits for it.");
    heading(blocks, "order", "The techniques, the one that interferes least first");
    blocks.add(new Lines(true, book.techniques().stream().map(HandbookGuide::leading).toList()));
    heading(blocks, "object", "If you think something is wrong");
    say(
        blocks,
        "Write down the number of the rule, or the name of the limit, what you use instead,"
            + " and why. Hornbook prints a questionnaire on all its limits, those with no book"
            + " behind them first (hornbook rules review), and adds up what experienced people"
            + " answer. A yard, a college or a country can set limits of its own in a local"
            + " practice without touching the rules.");
    return new Chapter("guide", "How to read this book", blocks);
  }

  private static RichText leading(NamedOption technique) {
    return RichText.link(technique.label(), HandbookAnchors.subject(technique.id()));
  }

  /** What a local practice changes and adds. */
  static Chapter practice(Section section) {
    List<RichText> lines =
        section.items().stream().map(item -> RichText.of(Sentence.capital(item.line()))).toList();
    return new Chapter(
        "practice",
        "The local practice",
        List.of(new Book.Heading("practice-of", section.heading()), new Lines(false, lines)));
  }

  private static void heading(List<Block> blocks, String anchor, String text) {
    blocks.add(new Book.Heading("guide-" + anchor, text));
  }

  private static void say(List<Block> blocks, String text) {
    blocks.add(new Paragraph(RichText.of(text)));
  }

  private static void words(List<Block> blocks, String... pairs) {
    List<Word> words = new ArrayList<>();
    for (int at = 0; at < pairs.length; at += 2) {
      words.add(new Word(null, pairs[at], RichText.of(pairs[at + 1])));
    }
    blocks.add(new Words(words));
  }

  private static List<RichText> lines(String... lines) {
    return List.of(lines).stream().map(RichText::of).toList();
  }
}
