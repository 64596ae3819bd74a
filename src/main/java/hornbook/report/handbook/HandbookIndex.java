package hornbook.report.handbook;

import hornbook.report.handbook.Book.Chapter;
import hornbook.report.handbook.Book.Word;
import hornbook.report.handbook.Book.Words;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The last chapters: the rules by the words of the trade in them, and what the words mean. */
final class HandbookIndex {
  /** A word that more rules use than this is indexed by their titles alone. */
  private static final int MANY = 24;

  private final Rulebook book;
  private final RuleWords words;

  HandbookIndex(Rulebook book, Phrases phrases) {
    this.book = book;
    this.words = new RuleWords(book, phrases);
  }

  Chapter index() {
    Map<String, Word> entries = new TreeMap<>();
    for (GlossaryTerm term : book.glossary()) {
      entries.put(term.word(), new Word(null, term.word(), using(term.word())));
    }
    return new Chapter(
        "index",
        "Index by the words of the trade",
        List.of(
            new Book.Paragraph(
                RichText.of(
                    "The rules that speak of a thing, by their numbers. Where very many do, those"
                        + " whose title names it.")),
            new Words(List.copyOf(entries.values()))));
  }

  private RichText using(String word) {
    Pattern use =
        Pattern.compile("\\b" + Pattern.quote(word) + "(s|es)?\\b", Pattern.CASE_INSENSITIVE);
    List<RuleEntry> all = new ArrayList<>();
    List<RuleEntry> titled = new ArrayList<>();
    for (RuleEntry rule : book.rules().values()) {
      if (use.matcher(rule.title()).find()) {
        titled.add(rule);
      }
      if (use.matcher(text(rule)).find()) {
        all.add(rule);
      }
    }
    if (all.size() <= MANY) {
      return all.isEmpty() ? RichText.link("glossary", anchor(word)) : HandbookAnchors.rules(all);
    }
    int others = all.size() - titled.size();
    String also = titled.isEmpty() ? "" : "; ";
    RichText named = titled.isEmpty() ? RichText.of("") : HandbookAnchors.rules(titled);
    return named.plus(also + "in passing in " + others + " more");
  }

  private String text(RuleEntry rule) {
    return String.join(
        "\n",
        rule.title(),
        words.says(rule, rule.text().says()),
        rule.text().meanwhile() == null ? "" : words.says(rule, rule.text().meanwhile()),
        rule.why(),
        String.join("\n", words.conditions(rule)),
        words.outcome(rule));
  }

  Chapter glossary() {
    List<Word> entries =
        book.glossary().stream()
            .map(term -> new Word(anchor(term.word()), term.word(), RichText.of(term.says())))
            .toList();
    return new Chapter("glossary", "Words of the trade", List.of(new Words(entries)));
  }

  private static String anchor(String word) {
    return "word-" + word.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
