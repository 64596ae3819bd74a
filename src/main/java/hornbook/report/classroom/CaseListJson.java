package hornbook.report.classroom;

import hornbook.report.page.JsonText;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Expected;
import java.util.List;

/** The list of the teaching cases for programs: no answers in it but the technique and the vet. */
public final class CaseListJson {
  private CaseListJson() {}

  public static String of(List<Exercise> cases) {
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeStringField("format", "hornbook-exercises/1");
          json.writeArrayFieldStart("cases");
          for (Exercise one : cases) {
            json.writeStartObject();
            json.writeStringField("name", one.name());
            json.writeStringField("title", one.title());
            json.writeNumberField("level", one.level());
            JsonText.texts(json, "topics", one.topics());
            json.writeStringField("pair", one.pair());
            json.writeObjectFieldStart("feet");
            for (var foot : one.expected().entrySet()) {
              Expected expected = foot.getValue();
              json.writeObjectFieldStart(foot.getKey().word());
              json.writeStringField("firstChoice", expected.firstChoice());
              json.writeStringField("urgency", expected.urgency());
              json.writeEndObject();
            }
            json.writeEndObject();
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }
}
