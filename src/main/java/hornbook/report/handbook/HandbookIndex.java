package hornbook.report.handbook;

import hornbook.report.handbook.Book.Chapter;
import hornbook.report.handbook.Book.Word;
import hornbook.report.handbook.Book.Words;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleSearch;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.Rulebook;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The last chapters: the rules by the words of the trade in them, and what the words mean. */
final class HandbookIndex {
  private final Rulebook book;
  private final RuleSearch search;

  HandbookIndex(Rulebook book, Phrases phrases) {
    this.book = book;
    this.search = new RuleSearch(book, phrases);
  }

  Chapter index() {
    Map<String, Word> entries = new TreeMap<>();
    for (GlossaryTerm term : book.glossary()) {
      entries.put(term.word(), new Word(null, term.word(), using(term.word())));
      for (String other : term.also()) {
        RichText see = RichText.link("glossary", anchor(term.word()));
        entries.putIfAbsent(other, new Word(null, other, RichText.of("see ").plus(see)));
      }
    }
    return new Chapter(
        "index",
        "Index by the words of the trade",
        List.of(
            new Book.Paragraph(
                RichText.of(
                    "The rules about each thing, by their numbers. If there are very many, those"
                        + " with the word in the title.")),
            new Words(List.copyOf(entries.values()))));
  }

  private RichText using(String word) {
    RuleSearch.Found found = search.exactly(word);
    if (found.all().size() <= RuleSearch.MANY) {
      return found.all().isEmpty()
          ? RichText.link("glossary", anchor(word))
          : HandbookAnchors.rules(found.all());
    }
    int others = found.all().size() - found.titled().size();
    String also = found.titled().isEmpty() ? "" : "; ";
    RichText named =
        found.titled().isEmpty() ? RichText.of("") : HandbookAnchors.rules(found.titled());
    return named.plus(also + "in passing in " + others + " more");
  }

  Chapter glossary() {
    List<Word> entries =
        book.glossary().stream()
            .map(term -> new Word(anchor(term.word()), term.word(), RichText.of(says(term))))
            .toList();
    return new Chapter("glossary", "Words of the trade", List.of(new Words(entries)));
  }

  private static String says(GlossaryTerm term) {
    return term.also().isEmpty()
        ? term.says()
        : term.says() + " Also looked up as: " + String.join(", ", term.also()) + ".";
  }

  private static String anchor(String word) {
    return "word-" + word.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
