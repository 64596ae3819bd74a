package hornbook.report.study;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.Verdict;
import hornbook.assessment.quantity.Units;
import hornbook.report.advice.PageHead;
import hornbook.report.advice.PracticeJson;
import hornbook.report.page.JsonText;
import hornbook.report.words.Amounts;
import hornbook.report.words.FactWriter;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Phrases;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.confidence.Confidence;
import hornbook.study.confidence.Confidence.Retake;
import hornbook.study.measure.Measurement;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Writes how steady the advice is in the format {@code hornbook-confidence/1}. What belongs to a
 * foot stands in the object itself where one foot was asked about, and under {@code feet} where
 * there were several. Shares are parts of one.
 */
public final class ConfidenceJson {
  public static final String FORMAT = "hornbook-confidence/1";

  private final JsonGenerator json;
  private final Rulebook book;
  private final FactWriter facts;
  private final Amounts amounts;

  private ConfidenceJson(JsonGenerator json, Rulebook book, Units units) {
    this.json = json;
    this.book = book;
    Phrases phrases = new Phrases(book, units);
    this.facts = new FactWriter(json, phrases);
    this.amounts = phrases.amounts();
  }

  /** All feet asked about, at least one. */
  public static String of(List<Confidence> all, Rulebook book, Units units) {
    return JsonText.of(json -> new ConfidenceJson(json, book, units).write(all));
  }

  private void write(List<Confidence> all) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    json.writeNumberField("runs", all.get(0).runs());
    json.writeNumberField("seed", all.get(0).seed());
    if (all.size() == 1) {
      foot(all.get(0));
    } else {
      json.writeArrayFieldStart("feet");
      for (Confidence one : all) {
        json.writeStartObject();
        foot(one);
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    Set<Limit> drawn = new LinkedHashSet<>();
    all.forEach(one -> drawn.addAll(one.errorsDrawn()));
    new PracticeJson(json, book, all.stream().map(Confidence::foot).toList(), drawn).write();
    json.writeStringField("safety", PageHead.SAFETY);
    json.writeEndObject();
  }

  private void foot(Confidence one) throws IOException {
    json.writeStringField("limb", one.foot().limb().word());
    json.writeNumberField("steady", one.steady());
    shares("firstChoice", one.firstChoice());
    verdicts("verdicts", one.techniques());
    verdicts("supports", one.supports());
    shares("referrals", one.referrals());
    shares("readings", one.findings());
    json.writeArrayFieldStart("retake");
    for (Retake again : one.retake()) {
      retake(again);
    }
    json.writeEndArray();
    errors(one);
  }

  private void shares(String name, Map<String, Double> shares) throws IOException {
    json.writeObjectFieldStart(name);
    for (Map.Entry<String, Double> share : shares.entrySet()) {
      json.writeNumberField(share.getKey(), share.getValue());
    }
    json.writeEndObject();
  }

  /** Every verdict there is, also those no run came to. */
  private void verdicts(String name, Map<String, Map<Verdict, Double>> all) throws IOException {
    json.writeObjectFieldStart(name);
    for (Map.Entry<String, Map<Verdict, Double>> one : all.entrySet()) {
      json.writeObjectFieldStart(one.getKey());
      for (Verdict verdict : Verdict.values()) {
        json.writeNumberField(verdict.word(), one.getValue().getOrDefault(verdict, 0.0));
      }
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void retake(Retake again) throws IOException {
    Measurement measurement = again.measurement();
    json.writeStartObject();
    json.writeStringField("field", measurement.path());
    JsonText.texts(json, "fields", measurement.paths());
    json.writeStringField("label", FieldNames.of(measurement.path()));
    String kept = measurement.kind().dimension().kept().symbol();
    Amounts.Amount value = amounts.amount(measurement.value(), kept);
    json.writeFieldName("value");
    facts.number(value.value());
    json.writeFieldName("plusMinus");
    facts.number(amounts.gapAmount(measurement.plusMinus(), kept));
    json.writeStringField("unit", value.unit());
    json.writeNumberField("explains", again.explains());
    JsonText.texts(json, "decides", again.decides());
    json.writeEndObject();
  }

  private void errors(Confidence one) throws IOException {
    Set<Limit> limits = new LinkedHashSet<>(one.errorsDrawn());
    limits.add(one.errors().deviations());
    limits.add(one.errors().shared());
    json.writeArrayFieldStart("errors");
    for (Limit limit : limits) {
      facts.fact(limit);
    }
    json.writeEndArray();
  }
}
