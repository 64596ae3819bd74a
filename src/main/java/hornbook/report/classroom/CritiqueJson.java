package hornbook.report.classroom;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.assessment.quantity.Units;
import hornbook.report.page.JsonText;
import hornbook.study.critique.Critique;
import hornbook.study.critique.FootCritique;
import hornbook.study.critique.Point;
import java.io.IOException;

/** A critique for programs: {@code hornbook-critique/1}. */
public final class CritiqueJson {
  private final JsonGenerator json;
  private final CritiqueTutor tutor;

  private CritiqueJson(JsonGenerator json, CritiqueTutor tutor) {
    this.json = json;
    this.tutor = tutor;
  }

  public static String of(Critique critique, Units units, CritiquePage.FirstChoiceIf firstIf) {
    CritiqueTutor tutor = new CritiqueTutor(critique.key().advice().rulebook(), units, firstIf);
    return JsonText.of(json -> new CritiqueJson(json, tutor).write(critique));
  }

  private void write(Critique critique) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "hornbook-critique/1");
    json.writeStringField("case", critique.key().name());
    json.writeStringField("by", critique.answer().by());
    json.writeNumberField("dangerous", critique.dangerous());
    json.writeArrayFieldStart("feet");
    for (FootCritique foot : critique.feet()) {
      json.writeStartObject();
      json.writeStringField("limb", foot.limb().word());
      json.writeArrayFieldStart("points");
      for (Point point : foot.points()) {
        write(tutor.item(foot, point));
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(CritiqueItem item) throws IOException {
    Point point = item.point();
    json.writeStartObject();
    json.writeStringField("about", point.about().word());
    json.writeStringField("subject", point.subject());
    json.writeStringField("verdict", point.verdict().word());
    json.writeBooleanField("model", point.key());
    json.writeStringField("bears", item.bears());
    json.writeStringField("asks", item.asks());
    String rules = String.join(" ", item.rules());
    json.writeStringField("says", rules.isEmpty() ? item.says() : item.says() + " " + rules);
    JsonText.texts(json, "rules", point.rules());
    JsonText.texts(json, "sources", point.sources());
    json.writeStringField("basis", point.basis() == null ? null : point.basis().word());
    json.writeEndObject();
  }
}
