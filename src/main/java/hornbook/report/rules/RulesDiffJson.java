package hornbook.report.rules;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.report.page.JsonText;
import hornbook.rulebook.Rulebook;
import hornbook.study.compare.RulesDiff;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;

/** How two rule bases differ, as JSON. */
public final class RulesDiffJson {
  private RulesDiffJson() {}

  public static String render(RulesDiff diff) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      write(diff, json);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return text.append('\n').toString();
  }

  private static void write(RulesDiff diff, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "hornbook-rules-diff/1");
    book("before", diff.before(), json);
    book("after", diff.after(), json);
    json.writeNumberField("feetRun", diff.run());
    parts("limits", false, diff, json);
    parts("rules", true, diff, json);
    json.writeArrayFieldStart("cases");
    for (RulesDiff.CaseChange change : diff.cases()) {
      json.writeStartObject();
      json.writeStringField("case", change.name());
      json.writeStringField("limb", change.limb().word());
      json.writeArrayFieldStart("changes");
      for (RulesDiff.Turn turn : change.turns()) {
        json.writeStartObject();
        json.writeStringField("what", turn.what());
        json.writeStringField("before", turn.before());
        json.writeStringField("after", turn.after());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void book(String name, Rulebook book, JsonGenerator json) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("version", book.version());
    json.writeStringField("digest", book.digest());
    json.writeStringField("practice", book.practice() == null ? null : book.practice().name());
    json.writeEndObject();
  }

  private static void parts(String name, boolean rules, RulesDiff diff, JsonGenerator json)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (RulesDiff.Part part : diff.parts()) {
      if (part.rule() == rules) {
        json.writeStartObject();
        json.writeStringField("id", part.id());
        json.writeStringField("label", part.label());
        json.writeStringField("fate", part.fate().name().toLowerCase(Locale.ROOT));
        JsonText.texts(json, "how", part.how());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }
}
