package hornbook.report.study;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.word.Word;
import hornbook.report.advice.PageHead;
import hornbook.report.advice.PracticeJson;
import hornbook.report.page.JsonText;
import hornbook.report.words.FactWriter;
import hornbook.report.words.Phrases;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.contrast.Contrast;
import hornbook.study.contrast.Contrast.Change;
import hornbook.study.contrast.FootContrasts;
import hornbook.study.contrast.OutcomeChange;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Writes contrasts in the format {@code hornbook-contrast/1}. What belongs to a foot stands in the
 * object itself where one foot was asked about, and under {@code feet} where there were several.
 * Contrasts come in the order of how far off they are, in measuring errors; {@code from} and {@code
 * to} are written as in a file.
 */
public final class ContrastJson {
  public static final String FORMAT = "hornbook-contrast/1";

  /** Sizes are told to a ten-thousandth of a measuring error. */
  private static final double GRAIN = 1e4;

  private final JsonGenerator json;
  private final Rulebook book;
  private final Phrases phrases;
  private final FactWriter facts;

  private ContrastJson(JsonGenerator json, Rulebook book, Units units) {
    this.json = json;
    this.book = book;
    this.phrases = new Phrases(book, units);
    this.facts = new FactWriter(json, phrases);
  }

  /** All feet asked about, at least one. */
  public static String of(List<FootContrasts> all, Rulebook book, Units units) {
    return JsonText.of(json -> new ContrastJson(json, book, units).write(all));
  }

  private void write(List<FootContrasts> all) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    if (all.size() == 1) {
      foot(all.get(0));
    } else {
      json.writeArrayFieldStart("feet");
      for (FootContrasts one : all) {
        json.writeStartObject();
        foot(one);
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    List<FootAdvice> feet = all.stream().map(FootContrasts::foot).toList();
    json.writeObjectFieldStart("rulebook");
    json.writeStringField("version", book.version());
    json.writeStringField("digest", book.digest());
    Set<Limit> used = new LinkedHashSet<>();
    all.forEach(one -> used.addAll(one.errors()));
    new PracticeJson(json, book, feet, used).write();
    json.writeEndObject();
    json.writeStringField("safety", PageHead.SAFETY);
    json.writeEndObject();
  }

  private void foot(FootContrasts one) throws IOException {
    json.writeStringField("limb", one.foot().limb().word());
    json.writeStringField(
        "firstChoice", one.foot().firstChoice().map(OptionAdvice::id).orElse(null));
    json.writeStringField(
        "urgency", one.foot().urgency().map(urgency -> urgency.word()).orElse(null));
    json.writeStringField("to", one.goal().subject());
    json.writeStringField("goal", kebab(one.goal().kind()));
    ContrastWords words = new ContrastWords(book, phrases, one.foot());
    json.writeArrayFieldStart("changes");
    for (Contrast contrast : one.contrasts()) {
      contrast(contrast, words);
    }
    json.writeEndArray();
    json.writeBooleanField("more", one.more());
    json.writeFieldName("threesTriedTo");
    facts.number(one.reach());
    errors(one);
  }

  private void contrast(Contrast contrast, ContrastWords words) throws IOException {
    json.writeStartObject();
    json.writeStringField("says", words.changes(contrast));
    json.writeArrayFieldStart("set");
    for (Change change : contrast.changes()) {
      for (String path : change.what().paths()) {
        json.writeStartObject();
        json.writeStringField("field", path);
        json.writeStringField("from", change.from());
        json.writeStringField("to", change.to());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    json.writeNumberField("things", contrast.changes().size());
    json.writeFieldName("measuringErrors");
    facts.number(Math.rint(contrast.errors() * GRAIN) / GRAIN);
    json.writeStringField("care", kebab(contrast.care()));
    json.writeArrayFieldStart("gives");
    for (OutcomeChange turn : contrast.gives()) {
      json.writeStartObject();
      json.writeStringField(kebab(turn.kind()), turn.id());
      json.writeStringField("from", turn.from());
      json.writeStringField("to", turn.to());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void errors(FootContrasts one) throws IOException {
    json.writeArrayFieldStart("errors");
    for (Limit limit : one.errors()) {
      facts.fact(limit);
    }
    json.writeEndArray();
  }

  private static String kebab(Enum<?> constant) {
    return Word.kebab(constant.name());
  }
}
