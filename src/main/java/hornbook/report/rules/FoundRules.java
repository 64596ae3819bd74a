package hornbook.report.rules;

import hornbook.report.page.JsonText;
import hornbook.report.page.PlainPage;
import hornbook.report.words.RuleSearch;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The rules that speak of a word of the trade, on a page. */
public final class FoundRules {
  private final Rulebook book;
  private final RuleSearch search;

  public FoundRules(Rulebook book) {
    this.book = book;
    this.search = new RuleSearch(book);
  }

  /**
   * The rules by topic; empty where none speaks of it. Of very many, those whose title has the word
   * stand in lines, the others by their numbers.
   */
  public Optional<String> list(String word, List<Topic> topics) {
    RuleSearch.Found found = within(word, topics);
    if (found.all().isEmpty()) {
      return Optional.empty();
    }
    PlainPage page = new PlainPage();
    lines(page, word, topics, found);
    return Optional.of(page.text());
  }

  /** The same as JSON: whole rules. */
  public Optional<String> listJson(String word, List<Topic> topics) {
    List<RuleEntry> all = within(word, topics).all();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(
            JsonText.of(
                json -> {
                  json.writeStartObject();
                  json.writeStringField("format", CatalogueJson.RULES);
                  json.writeStringField("word", word);
                  json.writeArrayFieldStart("rules");
                  for (RuleEntry rule : all) {
                    new RuleJson(book, json).rule(rule);
                  }
                  json.writeEndArray();
                  json.writeEndObject();
                }));
  }

  /** What the word means and which rules speak of it; empty where nothing knows it. */
  public Optional<String> page(String word) {
    GlossaryTerm term = search.term(word);
    RuleSearch.Found found = search.find(word);
    if (term == null && found.all().isEmpty()) {
      return Optional.empty();
    }
    PlainPage page = new PlainPage();
    if (term != null) {
      page.heading("A word of the trade").hanging(2, 4, term.word() + ": " + term.says());
    }
    lines(page, word, book.topics(), found);
    return Optional.of(page.text());
  }

  /** The same as JSON. */
  public Optional<String> json(String word) {
    GlossaryTerm term = search.term(word);
    List<RuleEntry> all = search.find(word).all();
    return term == null && all.isEmpty()
        ? Optional.empty()
        : Optional.of(JsonText.of(json -> json(json, word, term, all)));
  }

  private static void json(
      com.fasterxml.jackson.core.JsonGenerator json,
      String word,
      GlossaryTerm term,
      List<RuleEntry> all)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("format", CatalogueJson.ENTRY);
    json.writeStringField("word", term == null ? word : term.word());
    json.writeStringField("says", term == null ? null : term.says());
    json.writeArrayFieldStart("rules");
    for (RuleEntry rule : all) {
      json.writeString(rule.id());
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private RuleSearch.Found within(String word, List<Topic> topics) {
    RuleSearch.Found found = search.find(word);
    Set<String> ids = Set.copyOf(topics.stream().map(Topic::id).toList());
    return new RuleSearch.Found(
        found.all().stream().filter(rule -> ids.contains(rule.topic())).toList(),
        found.titled().stream().filter(rule -> ids.contains(rule.topic())).toList());
  }

  private static void lines(
      PlainPage page, String word, List<Topic> topics, RuleSearch.Found found) {
    boolean many = found.all().size() > RuleSearch.MANY;
    List<RuleEntry> listed = many ? found.titled() : found.all();
    for (Topic topic : topics) {
      List<RuleEntry> own =
          listed.stream().filter(rule -> rule.topic().equals(topic.id())).toList();
      if (!own.isEmpty()) {
        page.heading(topic.title() + " (" + topic.id() + ")");
        own.forEach(rule -> page.hanging(2, 8, rule.id() + "  " + rule.title()));
      }
    }
    List<String> others =
        found.all().stream().filter(rule -> !listed.contains(rule)).map(RuleEntry::id).toList();
    if (!others.isEmpty()) {
      page.heading("In passing").paragraph(2, String.join(" ", others));
    }
    int all = found.all().size();
    List<RuleEntry> first = found.titled().isEmpty() ? found.all() : found.titled();
    page.heading(
        (all == 1 ? "1 rule" : all + " rules")
            + " about \""
            + word
            + "\"."
            + (all == 0 ? "" : " One of them: hornbook rules show " + first.get(0).id()));
  }
}
