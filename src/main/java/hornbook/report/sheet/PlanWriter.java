package hornbook.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.CautionGiven;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.plan.sheet.MissingMeasure;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetLine;
import hornbook.plan.sheet.SheetPart;
import hornbook.report.advice.PageHead;
import hornbook.report.advice.PracticeJson;
import hornbook.report.words.FieldNames;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** One job sheet as a JSON object. */
final class PlanWriter {
  private final JsonGenerator json;
  private final Plan plan;
  private final PlanPhrases phrases;
  private final PlanFields fields;
  private final Units units;

  PlanWriter(JsonGenerator json, Plan plan, Units units) {
    this.json = json;
    this.plan = plan;
    this.phrases = new PlanPhrases(plan.advice().rulebook(), units);
    this.fields = new PlanFields(json, phrases.amounts());
    this.units = units;
  }

  void write() throws IOException {
    json.writeStartObject();
    head();
    referrals("untilTheVetComes", plan.stops(), true);
    referrals("referrals", plan.referrals(), false);
    reasons();
    new PlanWorkJson(json, plan, phrases).write();
    cautions();
    sheet();
    missing();
    new SheetProvenanceJson(json, plan, phrases).write();
    json.writeEndObject();
  }

  private void head() throws IOException {
    json.writeStringField("format", PlanJson.FORMAT);
    json.writeObjectFieldStart("rulebook");
    json.writeStringField("version", plan.advice().rulebook().version());
    json.writeStringField("digest", plan.advice().rulebook().digest());
    new PracticeJson(json, plan.advice().rulebook(), List.of(plan.foot())).write();
    json.writeEndObject();
    json.writeStringField("horse", plan.advice().assessment().horse().name());
    fields.date("date", plan.advice().assessment().visit().date());
    json.writeStringField("foot", plan.foot().limb().word());
    json.writeStringField("technique", plan.judged().id());
    json.writeStringField("verdict", plan.judged().verdict().word());
    json.writeStringField("despite", plan.wishes().despite());
    wishes(plan.wishes());
    json.writeBooleanField("provisional", plan.foot().provisional());
    json.writeStringField("units", units.name().toLowerCase(Locale.ROOT));
    json.writeStringField("safety", PageHead.SAFETY);
  }

  /** What was asked for beyond the technique, as it was said: mm, degrees and °C. */
  private void wishes(PlanWishes wishes) throws IOException {
    json.writeObjectFieldStart("wishes");
    wish("targetRatio", wishes.targetRatio());
    wish("targetAngle", wishes.targetAngle());
    wish("add", wishes.add());
    wish("dip", wishes.dip());
    wish("wedge", wishes.wedge());
    if (!wishes.supports().isEmpty()) {
      fields.texts("supports", wishes.supports());
    }
    json.writeEndObject();
  }

  private void wish(String key, Double value) throws IOException {
    if (value != null) {
      json.writeNumberField(key, value);
    }
  }

  private void referrals(String key, List<ReferralGiven> all, boolean stops) throws IOException {
    json.writeArrayFieldStart(key);
    for (ReferralGiven one : all) {
      json.writeStartObject();
      json.writeStringField("id", one.id());
      json.writeStringField("urgency", one.urgency().word());
      json.writeStringField("says", phrases.says(one.says()));
      if (stops) {
        json.writeStringField("meanwhile", phrases.says(one.meanwhile()));
      }
      json.writeStringField("rule", one.rule());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** What bears on the technique, for and against. */
  private void reasons() throws IOException {
    json.writeArrayFieldStart("reasons");
    OptionAdvice judged = plan.judged();
    for (ReasonGiven reason : judged.reasons()) {
      json.writeStartObject();
      json.writeStringField("bearing", reason.bearing().word());
      json.writeStringField("rule", reason.rule());
      json.writeStringField("says", phrases.says(reason.says()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void cautions() throws IOException {
    json.writeArrayFieldStart("cautions");
    for (CautionGiven caution : plan.cautions()) {
      json.writeStartObject();
      json.writeStringField("id", caution.id());
      json.writeStringField("says", phrases.says(caution.says()));
      json.writeStringField("rule", caution.rule());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void sheet() throws IOException {
    json.writeObjectFieldStart("sheet");
    for (SheetPart part : SheetPart.values()) {
      json.writeArrayFieldStart(part.key());
      for (SheetLine line : plan.lines(part)) {
        json.writeStartObject();
        json.writeStringField("id", line.instruction().id());
        json.writeStringField("says", phrases.says(line));
        json.writeStringField("basis", line.basis().word());
        fields.texts("sources", line.sources());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private void missing() throws IOException {
    json.writeArrayFieldStart("notMeasured");
    for (MissingMeasure one : plan.missing()) {
      json.writeStartObject();
      json.writeStringField("field", one.field());
      json.writeStringField("label", FieldNames.of(one.field()));
      json.writeStringField("how", FieldNames.how(one.field()));
      fields.texts("wantedFor", one.wantedFor());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
