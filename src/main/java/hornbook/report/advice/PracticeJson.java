package hornbook.report.advice;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.FootAdvice;
import hornbook.rulebook.LimitChange;
import hornbook.rulebook.Practice;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The local practice as JSON: all of it, and which of its moves touch the advice. */
public final class PracticeJson {
  private final JsonGenerator json;
  private final Rulebook book;
  private final List<FootAdvice> feet;
  private final Set<Limit> used;

  public PracticeJson(JsonGenerator json, Rulebook book, List<FootAdvice> feet) {
    this(json, book, feet, Set.of());
  }

  /**
   * @param used limits the page was reckoned with beside those of the rules
   */
  public PracticeJson(JsonGenerator json, Rulebook book, List<FootAdvice> feet, Set<Limit> used) {
    this.json = json;
    this.book = book;
    this.feet = feet;
    this.used = used;
  }

  /** The field {@code practice}: null where none was given. */
  public void write() throws IOException {
    Practice practice = book.practice();
    if (practice == null) {
      json.writeNullField("practice");
      return;
    }
    json.writeObjectFieldStart("practice");
    json.writeStringField("name", practice.name());
    json.writeStringField("by", practice.by());
    json.writeStringField("date", practice.date().toString());
    json.writeBooleanField("lessSafe", practice.changes().stream().anyMatch(LimitChange::lessSafe));
    json.writeArrayFieldStart("limits");
    for (LimitChange change : practice.changes()) {
      change(change);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("notes");
    for (Practice.Note note : practice.notes()) {
      json.writeStartObject();
      json.writeStringField(note.about().name().toLowerCase(Locale.ROOT), note.id());
      json.writeStringField("says", note.says());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("law", practice.law());
    json.writeArrayFieldStart("emergency");
    for (Practice.EmergencyNumber one : practice.emergency()) {
      json.writeStartObject();
      json.writeStringField("name", one.name());
      json.writeStringField("number", one.number());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** Values in the unit of the limit, whatever units the page is in. */
  private void change(LimitChange change) throws IOException {
    Limit after = change.after();
    json.writeStartObject();
    json.writeStringField("id", after.id());
    json.writeStringField("label", after.label());
    json.writeStringField("limbs", word(after.limbs()));
    json.writeStringField("age", word(after.age()));
    json.writeNumberField("was", change.before().value());
    json.writeNumberField("value", after.value());
    json.writeStringField("unit", after.unit());
    json.writeStringField("reason", change.reason());
    json.writeBooleanField("lessSafe", change.lessSafe());
    json.writeBooleanField("touches", PracticePart.touches(book, change, feet, used));
    json.writeEndObject();
  }

  private static String word(Enum<?> constant) {
    return constant == null ? null : constant.name().toLowerCase(Locale.ROOT);
  }
}
