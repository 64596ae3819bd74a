package hornbook.report.rules;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.assessment.quantity.Units;
import hornbook.report.page.JsonText;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.coverage.Coverage;
import hornbook.study.coverage.LimitCover;
import hornbook.study.coverage.RuleCover;
import java.io.IOException;
import java.util.List;

/** How far cases put a rule base to the test, as JSON. */
public final class RulesCoverageJson {
  private final RuleWords words;
  private final JsonGenerator json;

  private RulesCoverageJson(Rulebook book, JsonGenerator json) {
    this.words = new RuleWords(book, new Phrases(book, Units.MM));
    this.json = json;
  }

  public static String render(Coverage coverage, Rulebook book) {
    return JsonText.of(json -> new RulesCoverageJson(book, json).write(coverage, book));
  }

  private void write(Coverage coverage, Rulebook book) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "hornbook-rules-coverage/1");
    json.writeStringField("version", book.version());
    json.writeStringField("digest", book.digest());
    json.writeNumberField("feet", coverage.feet());
    json.writeBooleanField("whole", coverage.whole());
    json.writeArrayFieldStart("rules");
    for (RuleCover rule : coverage.rules()) {
      rule(rule);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("limits");
    for (LimitCover limit : coverage.limits()) {
      limit(limit);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void rule(RuleCover rule) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", rule.rule().id());
    json.writeStringField("title", rule.rule().title());
    json.writeNumberField("fired", rule.fired());
    json.writeNumberField("silent", rule.silent());
    json.writeBooleanField("whole", rule.whole());
    json.writeArrayFieldStart("conditions");
    List<String> asked = words.conditions(rule.rule());
    for (int at = 0; at < asked.size(); at++) {
      RuleCover.Seen seen = rule.conditions().get(at);
      json.writeStartObject();
      json.writeStringField("asks", asked.get(at));
      json.writeNumberField("true", seen.yes());
      json.writeNumberField("false", seen.no());
      json.writeNumberField("aloneFalse", seen.alone());
      json.writeBooleanField("whole", seen.whole());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void limit(LimitCover cover) throws IOException {
    Limit limit = cover.limit();
    json.writeStartObject();
    RuleJson.named(limit, json);
    json.writeNumberField("under", cover.under());
    json.writeNumberField("at", cover.at());
    json.writeNumberField("over", cover.over());
    JsonText.texts(json, "holes", cover.holes());
    json.writeEndObject();
  }
}
