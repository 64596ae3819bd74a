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
        "Somebody writes down what was seen and measured on a foot. Hornbook compares that with"
            + " the rules in this book, one by one. All its advice comes from these rules: there"
            + " is no score, and nothing is hidden. You need no program to read the book. If you"
            + " work with feet and think that a rule or a number is wrong, please say so.");
    heading(blocks, "a-rule", "What stands under a rule");
    words(
        blocks,
        "Its number and title",
        "Quote the number when you object to the rule.",
        "Its sentence",
        "What the farrier reads. Words in italics are filled in for the foot.",
        "Then",
        "What the rule concludes: a finding, a call for the vet, a reason for or against a technique, or a warning.",
        "Applies if",
        "The conditions. All of them have to be known and true. Found means that another rule has found it.",
        "Why",
        "The reason behind the rule.",
        "When silent",
        "On which feet the rule says nothing.",
        "Limits",
        "The numbers it uses, each with its source and with authors who disagree.",
        "Example case",
        "A made-up foot on which the rule fires, and the sentence it then gives. Stretches of wall are measured back along the ground edge from the middle of the toe, on the inner and on the outer side.",
        "Near-miss",
        "The same foot with one thing changed, so that the rule is silent.",
        "Basis",
        "How good the source is, and the works the rule rests on.");
    heading(blocks, "basis", "How good the source is");
    words(
        blocks,
        "published",
        "A named work says so, from measurement, trial or long teaching.",
        "quoted",
        "One work reports what another work says. The other work was not seen.",
        "derived",
        "Worked out from published numbers.",
        "practice",
        "Common practice of the trade, with no work behind it.",
        "memory",
        "The authors believe it. Check it before you rely on it.");
    say(
        blocks,
        "With several sources, the weakest one counts. A number that no book gives is never"
            + " passed off as published.");
    heading(blocks, "unknown", "What nobody looked at");
    say(
        blocks,
        "Not looked at is not the same as normal. A rule uses only what is known. Hornbook asks for"
            + " what is not known and could change the advice, and first for what could call the"
            + " vet. Until that is answered the advice is called provisional.");
    heading(blocks, "verdicts", "From reasons to advice");
    say(
        blocks,
        "Rules only give reasons. The verdict on a technique follows from them in this order; the"
            + " first line that is true counts:");
    blocks.add(
        new Lines(
            true,
            lines(
                "A rule rules the technique out: ruled out.",
                "The vet is called for now: ruled out until the vet has seen the foot; only with"
                    + " the vet if a vet already directs the case.",
                "There is no reason for the technique: not indicated.",
                "The vet is called for today, or the vet has to settle something first: only with"
                    + " the vet.",
                "Otherwise: workable.",
                "Of the workable ones that deal with every defect found, those with nothing"
                    + " against them come before the others. The one that interferes least, by the"
                    + " order below, is the first choice. There may be none.")));
    say(
        blocks,
        "If the farrier has to put something right first, no verdict changes; the page prints it"
            + " as the first step. First aid may be done while the vet is awaited. Calls do not"
            + " hold it back, and everything else on the foot waits for it.");
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
