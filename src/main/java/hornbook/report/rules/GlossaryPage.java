package hornbook.report.rules;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.report.page.JsonText;
import hornbook.report.page.PlainPage;
import hornbook.report.words.RuleSearch;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.NameSearch;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The words of the trade and what they mean; older words lead to those used today. */
public final class GlossaryPage {
  public static final String FORMAT = "hornbook-glossary/1";

  private final Rulebook book;

  public GlossaryPage(Rulebook book) {
    this.book = book;
  }

  /** The word asked for, by itself or by another word for it; else those with it in their name. */
  public List<GlossaryTerm> find(String asked) {
    GlossaryTerm whole = new RuleSearch(book).term(asked);
    if (whole != null) {
      return List.of(whole);
    }
    List<NamedOption> all = new ArrayList<>();
    for (GlossaryTerm term : book.glossary()) {
      all.add(new NamedOption(term.word(), term.word()));
      term.also().forEach(other -> all.add(new NamedOption(term.word(), other)));
    }
    Set<String> found = new LinkedHashSet<>();
    NameSearch.find(asked, all).forEach(one -> found.add(one.id()));
    return book.glossary().stream().filter(term -> found.contains(term.word())).toList();
  }

  public String text(List<GlossaryTerm> terms) {
    PlainPage page = new PlainPage();
    for (GlossaryTerm term : terms) {
      page.hanging(0, 2, term.word() + ": " + term.says());
      if (!term.also().isEmpty()) {
        page.hanging(2, 4, "also: " + String.join(", ", term.also()));
      }
    }
    if (terms.size() == 1) {
      page.paragraph(
          0, "The rules that use the word: hornbook rules show \"" + terms.get(0).word() + "\"");
    }
    return page.text();
  }

  public String json(List<GlossaryTerm> terms) {
    return JsonText.of(json -> json(terms, json));
  }

  private static void json(List<GlossaryTerm> terms, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    json.writeArrayFieldStart("words");
    for (GlossaryTerm term : terms) {
      json.writeStartObject();
      json.writeStringField("word", term.word());
      json.writeStringField("says", term.says());
      JsonText.texts(json, "also", term.also());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
