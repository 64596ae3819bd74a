package hornbook.report.rules;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.word.Word;
import hornbook.report.page.JsonText;
import hornbook.report.words.CrossReferences;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.util.List;

/** Writes rules and limits of the catalogue as JSON. */
final class RuleJson {
  private final RuleWords words;
  private final CrossReferences uses;
  private final JsonGenerator json;

  RuleJson(Rulebook book, JsonGenerator json) {
    this.words = new RuleWords(book, new Phrases(book, Units.MM));
    this.uses = new CrossReferences(book);
    this.json = json;
  }

  /** A rule among others. */
  void rule(RuleEntry rule) throws IOException {
    json.writeStartObject();
    fields(rule);
  }

  /** A rule by itself. */
  void alone(RuleEntry rule) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", CatalogueJson.ENTRY);
    fields(rule);
  }

  private void fields(RuleEntry rule) throws IOException {
    json.writeStringField("id", rule.id());
    json.writeStringField("title", rule.title());
    json.writeStringField("topic", rule.topic());
    json.writeStringField("basis", uses.weakest(rule).word());
    json.writeStringField("since", rule.since());
    json.writeStringField("says", rule.text().says());
    if (rule.text().meanwhile() != null) {
      json.writeStringField("meanwhile", rule.text().meanwhile());
    }
    JsonText.texts(json, "conditions", words.conditions(rule));
    json.writeStringField("then", words.outcome(rule));
    outcome(rule.outcome());
    JsonText.texts(json, "techniques", rule.text().techniques());
    json.writeStringField("why", rule.why());
    json.writeStringField("silent", rule.silent());
    limits("limits", rule.limits().flatMap(id -> uses.limits(id).stream()).toList());
    JsonText.texts(json, "sources", rule.text().sources());
    json.writeStringField("file", rule.file());
    json.writeNumberField("line", rule.line());
    json.writeEndObject();
  }

  private void outcome(RuleConclusion outcome) throws IOException {
    if (outcome instanceof RuleConclusion.Finds finds) {
      json.writeStringField("finds", finds.finding());
    } else if (outcome instanceof RuleConclusion.Refers refers) {
      json.writeStringField("refers", refers.id());
      json.writeStringField("urgency", refers.urgency().word());
    } else if (outcome instanceof RuleConclusion.Reasons reasons) {
      json.writeStringField("bearing", reasons.bearing().word());
      JsonText.texts(json, "subjects", reasons.subjects());
    } else {
      json.writeStringField("warns", ((RuleConclusion.Cautions) outcome).id());
    }
  }

  void limits(String name, List<Limit> limits) throws IOException {
    json.writeArrayFieldStart(name);
    for (Limit limit : limits) {
      limit(limit);
    }
    json.writeEndArray();
  }

  private void limit(Limit limit) throws IOException {
    json.writeStartObject();
    named(limit, json);
    json.writeStringField("source", limit.source());
    json.writeStringField("locator", limit.locator());
    json.writeStringField("basis", limit.basis().word());
    json.writeStringField("safer", word(limit.safer()));
    json.writeNumberField("step", limit.step());
    json.writeArrayFieldStart("disputes");
    for (Limit.Dispute dispute : limit.disputes()) {
      dispute(dispute);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** Which limit it is, with its value. */
  static void named(Limit limit, JsonGenerator json) throws IOException {
    json.writeStringField("id", limit.id());
    json.writeStringField("label", limit.label());
    json.writeNumberField("value", limit.value());
    json.writeStringField("unit", limit.unit());
    json.writeStringField("direction", word(limit.direction()));
    json.writeBooleanField("inclusive", limit.inclusive());
    if (limit.limbs() != null) {
      json.writeStringField("limbs", word(limit.limbs()));
    }
    if (limit.age() != null) {
      json.writeStringField("age", word(limit.age()));
    }
  }

  private void dispute(Limit.Dispute dispute) throws IOException {
    json.writeStartObject();
    if (dispute.value() != null) {
      json.writeNumberField("value", dispute.value());
    }
    json.writeStringField("source", dispute.source());
    json.writeStringField("says", dispute.says());
    json.writeEndObject();
  }

  private static String word(Enum<?> constant) {
    return Word.kebab(constant.name());
  }
}
