package hornbook.report.classroom;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.report.page.JsonText;
import hornbook.study.marking.AnswerMarks;
import hornbook.study.marking.ClassAnalysis;
import hornbook.study.marking.ClassMarks;
import hornbook.study.marking.Kappa;
import hornbook.study.marking.NextCases;
import hornbook.study.marking.PointMarks;
import java.io.IOException;
import java.util.List;

/** Marks for programs: {@code hornbook-marks/1}. */
public final class MarksJson {
  private final JsonGenerator json;

  private MarksJson(JsonGenerator json) {
    this.json = json;
  }

  /**
   * Writes them.
   *
   * @param teachNext the cases that teach what was missed
   */
  public static String of(ClassMarks marks, List<NextCases.Next> teachNext) {
    return JsonText.of(json -> new MarksJson(json).write(marks, teachNext));
  }

  private void write(ClassMarks marks, List<NextCases.Next> teachNext) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "hornbook-marks/1");
    json.writeStringField("case", marks.key().name());
    json.writeStringField("scheme", marks.scheme().name());
    number("of", marks.of());
    json.writeArrayFieldStart("learners");
    for (ClassMarks.Row row : marks.rows()) {
      learner(row, marks.of());
    }
    json.writeEndArray();
    whole(ClassAnalysis.of(marks), teachNext);
    agreement(marks.agreement());
    json.writeEndObject();
  }

  private void learner(ClassMarks.Row row, double of) throws IOException {
    AnswerMarks marks = row.marks();
    json.writeStartObject();
    json.writeStringField("by", row.by());
    json.writeStringField("file", row.file());
    if (marks == null) {
      json.writeNullField("marks");
    } else {
      number("marks", marks.marks());
    }
    number("of", of);
    json.writeBooleanField("capped", marks != null && marks.capped());
    json.writeNumberField("dangerous", marks == null ? 0 : marks.dangerous());
    json.writeArrayFieldStart("points");
    if (marks != null) {
      for (PointMarks point : marks.points()) {
        json.writeStartObject();
        json.writeStringField("id", point.id());
        number("marks", point.marks());
        number("of", point.of());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    json.writeStringField("error", marks == null ? String.join("; ", row.error()) : null);
    json.writeEndObject();
  }

  private void whole(ClassAnalysis analysis, List<NextCases.Next> teachNext) throws IOException {
    json.writeObjectFieldStart("class");
    json.writeNumberField("answers", analysis.answers());
    json.writeNumberField("marked", analysis.marked());
    computed("mean", analysis.mean());
    computed("median", analysis.median());
    computed("kr20", analysis.kr20());
    computed("alpha", analysis.alpha());
    json.writeArrayFieldStart("points");
    for (ClassAnalysis.Item item : analysis.points()) {
      json.writeStartObject();
      json.writeStringField("id", item.id());
      json.writeStringField("says", item.says());
      computed("difficulty", item.difficulty());
      computed("discrimination", item.discrimination());
      JsonText.texts(json, "rules", item.rules());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("missed");
    for (ClassAnalysis.Missed one : analysis.missed()) {
      json.writeStartObject();
      json.writeStringField("id", one.id());
      json.writeStringField("subject", one.subject());
      json.writeStringField("verdict", one.verdict().word());
      json.writeNumberField("learners", one.learners());
      JsonText.texts(json, "rules", one.rules());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("teachNext");
    for (NextCases.Next one : teachNext) {
      json.writeStartObject();
      json.writeStringField("case", one.exercise().name());
      json.writeNumberField("level", one.exercise().level());
      JsonText.texts(json, "rules", one.rules().keySet());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** Null where there is no second marker. */
  private void agreement(Kappa kappa) throws IOException {
    if (kappa == null) {
      json.writeNullField("agreement");
      return;
    }
    json.writeObjectFieldStart("agreement");
    json.writeNumberField("compared", kappa.compared());
    computed("kappa", kappa.kappa());
    computed("low", kappa.low());
    computed("high", kappa.high());
    json.writeEndObject();
  }

  private void number(String key, double value) throws IOException {
    if (value == Math.rint(value)) {
      json.writeNumberField(key, (long) value);
    } else {
      json.writeNumberField(key, value);
    }
  }

  private void computed(String key, Double value) throws IOException {
    if (value == null) {
      json.writeNullField(key);
    } else {
      number(key, Math.rint(value * 1e4) / 1e4);
    }
  }
}
