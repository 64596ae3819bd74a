package hornbook.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.CautionGiven;
import hornbook.advice.Judged;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.assessment.Stretch;
import hornbook.assessment.Units;
import hornbook.plan.ClockStep;
import hornbook.plan.Figure;
import hornbook.plan.FootNumbers;
import hornbook.plan.GrowthDates;
import hornbook.plan.Line;
import hornbook.plan.Missing;
import hornbook.plan.Part;
import hornbook.plan.Plan;
import hornbook.plan.PlannedClip;
import hornbook.plan.PlannedNail;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** One job sheet as a JSON object. */
final class PlanWriter {
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
  private final PlanAmounts amounts;
  private final Units units;

  PlanWriter(JsonGenerator json, Plan plan, Units units) {
    this.json = json;
    this.plan = plan;
    this.phrases = new PlanPhrases(plan.advice().rulebook(), units);
    this.amounts = phrases.amounts();
    this.units = units;
  }

  void write() throws IOException {
    json.writeStartObject();
    head();
    referrals("untilTheVetComes", plan.stops(), true);
    referrals("referrals", plan.referrals(), false);
    reasons();
    nails();
    clips();
    foot("footBefore", plan.before());
    foot("footAfter", plan.after());
    shoe();
    materials();
    steps();
    growth();
    date("nextVisit", plan.nextVisit());
    figure("nextVisitDays", plan.interval());
    cautions();
    sheet();
    missing();
    numbers();
    limits();
    texts("sources", plan.sources());
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
    date("date", plan.advice().assessment().visit().date());
    json.writeStringField("foot", plan.foot().limb().word());
    json.writeStringField("technique", plan.judged().id());
    json.writeStringField("verdict", plan.judged().verdict().word());
    json.writeStringField("despite", plan.wishes().despite());
    json.writeBooleanField("provisional", plan.foot().provisional());
    json.writeStringField("units", units.name().toLowerCase(Locale.ROOT));
    json.writeStringField("safety", Head.SAFETY);
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
    Judged judged = plan.judged();
    for (ReasonGiven reason : judged.reasons()) {
      json.writeStartObject();
      json.writeStringField("bearing", reason.bearing().word());
      json.writeStringField("rule", reason.rule());
      json.writeStringField("says", phrases.says(reason.says()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void nails() throws IOException {
    json.writeArrayFieldStart("nails");
    for (PlannedNail nail : plan.nails()) {
      json.writeStartObject();
      json.writeStringField("side", nail.side().word());
      number("at", nail.at());
      number("exit", nail.exit());
      json.writeStringField("unit", amounts.amount(0, "mm").unit());
      json.writeBooleanField("behindUsualLimit", nail.behind());
      stretch(nail.stretch());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void stretch(Stretch stretch) throws IOException {
    json.writeObjectFieldStart("stretch");
    json.writeStringField("state", stretch.state().word());
    number("from", stretch.from(), "mm");
    number("to", stretch.to(), "mm");
    json.writeEndObject();
  }

  private void clips() throws IOException {
    json.writeArrayFieldStart("clips");
    for (PlannedClip clip : plan.clips()) {
      json.writeStartObject();
      json.writeStringField("side", clip.side() == null ? "toe" : clip.side().word());
      number("at", clip.at(), "mm");
      json.writeStringField("unit", amounts.amount(0, "mm").unit());
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
      number(FOOT.get(i), numbers.all().get(i));
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
      number("amount", one);
      json.writeStringField("unit", amounts.amount(0, one.unit()).unit());
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
      json.writeNumber(tidy(step.minutes().low()));
      json.writeNumber(tidy(step.minutes().high()));
      json.writeEndArray();
      json.writeStringField(
          "counted", step.counted().name().toLowerCase(Locale.ROOT).replace('_', '-'));
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
    date("slow", dates.on(dates.slow()));
    date("mean", dates.on(dates.mean()));
    date("fast", dates.on(dates.fast()));
    json.writeObjectFieldStart("days");
    number("slow", dates.slow());
    number("mean", dates.mean());
    number("fast", dates.fast());
    json.writeEndObject();
    json.writeEndObject();
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
    for (Part part : Part.values()) {
      json.writeArrayFieldStart(part.name().toLowerCase(Locale.ROOT));
      for (Line line : plan.lines(part)) {
        json.writeStartObject();
        json.writeStringField("id", line.instruction().id());
        json.writeStringField("says", phrases.says(line));
        json.writeStringField("basis", line.basis().word());
        texts("sources", line.sources());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private void missing() throws IOException {
    json.writeArrayFieldStart("notMeasured");
    for (Missing one : plan.missing()) {
      json.writeStartObject();
      json.writeStringField("field", one.field());
      json.writeStringField("label", FieldNames.of(one.field()));
      json.writeStringField("how", FieldNames.how(one.field()));
      texts("wantedFor", one.wantedFor());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void numbers() throws IOException {
    json.writeArrayFieldStart("numbers");
    for (Figure one : plan.reckoned()) {
      json.writeStartObject();
      json.writeStringField("what", one.label());
      json.writeFieldName("value");
      if (one.low() == one.high()) {
        value(one.low(), one.unit());
      } else {
        json.writeNull();
        number("low", one.low(), one.unit());
        number("high", one.high(), one.unit());
      }
      json.writeStringField("unit", amounts.amount(0, one.unit()).unit());
      json.writeStringField("formula", phrases.formula(one));
      json.writeStringField("basis", one.basis().word());
      texts("sources", one.sources());
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
      number("value", limit.value(), limit.unit());
      json.writeStringField("unit", amounts.amount(0, limit.unit()).unit());
      json.writeStringField("basis", limit.basis().word());
      json.writeStringField("source", limit.source());
      json.writeStringField("locator", limit.locator());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void texts(String key, Collection<String> texts) throws IOException {
    json.writeArrayFieldStart(key);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private void date(String key, LocalDate date) throws IOException {
    json.writeStringField(key, date == null ? null : date.toString());
  }

  private void figure(String key, Figure figure) throws IOException {
    if (figure == null) {
      json.writeNullField(key);
    } else {
      number(key, figure);
    }
  }

  private void number(String key, Figure figure) throws IOException {
    number(key, figure.value(), figure.unit());
  }

  private void number(String key, double value, String unit) throws IOException {
    json.writeFieldName(key);
    value(value, unit);
  }

  private void value(double value, String unit) throws IOException {
    if (Double.isNaN(value)) {
      json.writeNull();
    } else {
      json.writeNumber(tidy(amounts.amount(value, unit).value()));
    }
  }

  /** Without the noise of the last digits of a sum. */
  private static double tidy(double value) {
    double grain = 1e6;
    return Math.rint(value * grain) / grain + 0.0;
  }
}
