package hornbook.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.Word;
import hornbook.plan.Plan;
import hornbook.plan.effect.FootNumbers;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.ClockStep;
import hornbook.plan.sheet.GrowthDates;
import hornbook.plan.sheet.PlannedClip;
import hornbook.plan.sheet.PlannedNail;
import java.io.IOException;
import java.util.List;

/** The work on a job sheet as JSON: nails, the foot before and after, materials, clock, growth. */
final class PlanWorkJson {
  private static final List<String> FOOT =
      List.of(
          "toeLength",
          "heelLength",
          "toeHeelRatio",
          "toeAngle",
          "hoofPasternAxis",
          "width",
          "bearingLength",
          "breakover",
          "heelSupport");

  private final JsonGenerator json;
  private final Plan plan;
  private final PlanPhrases phrases;
  private final PlanFields fields;

  PlanWorkJson(JsonGenerator json, Plan plan, PlanPhrases phrases) {
    this.json = json;
    this.plan = plan;
    this.phrases = phrases;
    this.fields = new PlanFields(json, phrases.amounts());
  }

  void write() throws IOException {
    nails();
    clips();
    foot("footBefore", plan.before());
    foot("footAfter", plan.after());
    shoe();
    materials();
    steps();
    growth();
    fields.date("nextVisit", plan.nextVisit());
    fields.figure("nextVisitDays", plan.interval());
  }

  private void nails() throws IOException {
    json.writeArrayFieldStart("nails");
    for (PlannedNail nail : plan.nails()) {
      json.writeStartObject();
      json.writeStringField("side", nail.side().word());
      fields.number("at", nail.at());
      fields.number("exit", nail.exit());
      fields.unit("mm");
      json.writeBooleanField("behindUsualLimit", nail.behind());
      stretch(nail.stretch());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void stretch(WallStretch stretch) throws IOException {
    json.writeObjectFieldStart("stretch");
    json.writeStringField("state", stretch.state().word());
    fields.number("from", stretch.from(), "mm");
    fields.number("to", stretch.to(), "mm");
    json.writeEndObject();
  }

  private void clips() throws IOException {
    json.writeArrayFieldStart("clips");
    for (PlannedClip clip : plan.clips()) {
      json.writeStartObject();
      json.writeStringField("side", clip.side() == null ? "toe" : clip.side().word());
      fields.number("at", clip.at(), "mm");
      fields.unit("mm");
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void foot(String key, FootNumbers numbers) throws IOException {
    if (numbers == null) {
      json.writeNullField(key);
      return;
    }
    json.writeObjectFieldStart(key);
    for (int i = 0; i < FOOT.size(); i++) {
      fields.number(FOOT.get(i), numbers.all().get(i));
    }
    json.writeEndObject();
  }

  private void shoe() throws IOException {
    json.writeObjectFieldStart("shoe");
    json.writeStringField("before", plan.shoe().before());
    json.writeStringField("after", plan.shoe().after());
    json.writeEndObject();
  }

  private void materials() throws IOException {
    json.writeArrayFieldStart("materials");
    for (Figure one : plan.materials()) {
      json.writeStartObject();
      json.writeStringField("what", one.label());
      fields.number("amount", one);
      fields.unit(one.unit());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void steps() throws IOException {
    json.writeArrayFieldStart("steps");
    for (ClockStep step : plan.steps()) {
      json.writeStartObject();
      json.writeStringField("says", phrases.says(step.says()));
      json.writeArrayFieldStart("minutes");
      json.writeNumber(PlanFields.tidy(step.minutes().low()));
      json.writeNumber(PlanFields.tidy(step.minutes().high()));
      json.writeEndArray();
      json.writeStringField("counted", Word.kebab(step.counted().name()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void growth() throws IOException {
    json.writeObjectFieldStart("growth");
    dates("aboveNailExit", plan.aboveNailExit());
    dates("ground", plan.ground());
    json.writeEndObject();
  }

  /** Days of the calendar, null where the visit has none, and counts of days. */
  private void dates(String key, GrowthDates dates) throws IOException {
    if (dates == null) {
      json.writeNullField(key);
      return;
    }
    json.writeObjectFieldStart(key);
    fields.date("slow", dates.on(dates.slow()));
    fields.date("mean", dates.on(dates.mean()));
    fields.date("fast", dates.on(dates.fast()));
    json.writeObjectFieldStart("days");
    fields.number("slow", dates.slow());
    fields.number("mean", dates.mean());
    fields.number("fast", dates.fast());
    json.writeEndObject();
    json.writeEndObject();
  }
}
