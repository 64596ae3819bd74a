package hornbook.report.rules;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.report.page.JsonText;
import hornbook.report.words.CrossReferences;
import hornbook.rulebook.FindingKind;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The catalogue of the rule base as JSON. */
public final class CatalogueJson {
  /** A list of rules. */
  public static final String RULES = "hornbook-rules/1";

  /** One thing the rule base knows by name. */
  public static final String ENTRY = "hornbook-rules-entry/1";

  private final Rulebook book;
  private final CrossReferences uses;

  public CatalogueJson(Rulebook book) {
    this.book = book;
    this.uses = new CrossReferences(book);
  }

  /** A list of the rules of these topics. */
  public String rules(List<Topic> topics) {
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeStringField("format", RULES);
          json.writeArrayFieldStart("rules");
          for (Topic topic : topics) {
            for (RuleEntry rule : RuleList.of(book, topic)) {
              new RuleJson(book, json).rule(rule);
            }
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  /** A rule, limit, finding, technique, support or source; empty where none has this id. */
  public Optional<String> of(String id) {
    JsonText.Body body = body(id);
    return body == null ? Optional.empty() : Optional.of(JsonText.of(body));
  }

  private JsonText.Body body(String id) {
    if (book.rules().containsKey(id)) {
      return json -> new RuleJson(book, json).alone(book.rules().get(id));
    }
    List<Limit> limits = uses.limits(id);
    if (!limits.isEmpty()) {
      return json -> limit(json, limits);
    }
    if (book.findings().containsKey(id)) {
      return json -> finding(json, book.findings().get(id));
    }
    if (book.technique(id) != null) {
      return json -> subject(json, "technique", book.technique(id));
    }
    if (book.support(id) != null) {
      return json -> subject(json, "support", book.support(id));
    }
    return book.sources().containsKey(id) ? json -> source(json, book.sources().get(id)) : null;
  }

  private void limit(JsonGenerator json, List<Limit> limits) throws IOException {
    RuleJson rules = new RuleJson(book, json);
    json.writeStartObject();
    json.writeStringField("format", ENTRY);
    rules.limits("limits", limits);
    ids(json, "rules", uses.heldTo(limits.get(0).id()));
    json.writeEndObject();
  }

  private void finding(JsonGenerator json, FindingKind finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", ENTRY);
    json.writeStringField("finding", finding.id());
    json.writeStringField("label", finding.label());
    json.writeBooleanField("defect", finding.defect());
    json.writeStringField("topic", finding.topic());
    ids(json, "foundBy", uses.finding(finding.id()));
    ids(json, "builtOnBy", uses.buildingOn(finding.id()));
    json.writeEndObject();
  }

  private void subject(JsonGenerator json, String kind, NamedOption subject) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", ENTRY);
    json.writeStringField(kind, subject.id());
    json.writeStringField("label", subject.label());
    for (Bearing bearing : Bearing.values()) {
      String name = bearing == Bearing.NEEDS_VET ? "needs-vet" : bearing.word();
      ids(json, name, uses.bearing(bearing, subject.id()));
    }
    json.writeEndObject();
  }

  private void source(JsonGenerator json, Source source) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", ENTRY);
    json.writeStringField("source", source.key());
    json.writeStringField("author", source.author());
    json.writeStringField("title", source.title());
    json.writeNumberField("year", source.year());
    json.writeStringField("where", source.where());
    RuleJson rules = new RuleJson(book, json);
    rules.limits("limits", uses.limitsFrom(source.key()));
    rules.limits("disputes", uses.limitsDisputedBy(source.key()));
    ids(json, "rules", uses.citing(source.key()));
    json.writeEndObject();
  }

  private static void ids(JsonGenerator json, String name, List<RuleEntry> rules)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (RuleEntry rule : rules) {
      json.writeString(rule.id());
    }
    json.writeEndArray();
  }
}
