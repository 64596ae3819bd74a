package hornbook.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.foot.number.Unknown;
import hornbook.plan.Plan;
import hornbook.plan.figure.Figure;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;

/** What stands behind a job sheet as JSON: its numbers, the limits they rest on, the works. */
final class SheetProvenanceJson {
  private final JsonGenerator json;
  private final Plan plan;
  private final PlanPhrases phrases;
  private final PlanFields fields;

  SheetProvenanceJson(JsonGenerator json, Plan plan, PlanPhrases phrases) {
    this.json = json;
    this.plan = plan;
    this.phrases = phrases;
    this.fields = new PlanFields(json, phrases.amounts());
  }

  void write() throws IOException {
    numbers();
    limits();
    fields.texts("sources", plan.sources());
  }

  private void numbers() throws IOException {
    json.writeArrayFieldStart("numbers");
    for (Figure one : plan.reckoned()) {
      json.writeStartObject();
      json.writeStringField("what", one.label());
      boolean exact = one.low() == one.high();
      fields.number("value", exact ? one.low() : Unknown.NUMBER, one.unit());
      if (!exact) {
        fields.number("low", one.low(), one.unit());
        fields.number("high", one.high(), one.unit());
      }
      fields.unit(one.unit());
      json.writeStringField("formula", phrases.formula(one));
      json.writeStringField("basis", one.basis().word());
      fields.texts("sources", one.sources());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void limits() throws IOException {
    json.writeArrayFieldStart("limits");
    for (Limit limit : plan.taken()) {
      json.writeStartObject();
      json.writeStringField("id", limit.id());
      json.writeStringField("label", limit.label());
      fields.number("value", limit.value(), limit.unit());
      fields.unit(limit.unit());
      json.writeStringField("basis", limit.basis().word());
      json.writeStringField("source", limit.source());
      json.writeStringField("locator", limit.locator());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
