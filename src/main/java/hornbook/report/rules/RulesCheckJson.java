package hornbook.report.rules;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.report.page.JsonText;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleFault;
import hornbook.study.rulecheck.RuleBaseCheck;
import java.io.IOException;

/** What is wrong with a rule base, as JSON. */
public final class RulesCheckJson {
  private RulesCheckJson() {}

  /**
   * One object.
   *
   * @param where the folder of the rules as the user knows it
   */
  public static String render(RuleBaseCheck check, String where) {
    return JsonText.of(json -> write(check, where, json));
  }

  private static void write(RuleBaseCheck check, String where, JsonGenerator json)
      throws IOException {
    Rulebook book = check.book();
    json.writeStartObject();
    json.writeStringField("format", "hornbook-rules-check/1");
    json.writeStringField("rules", where);
    json.writeStringField("version", book.version());
    json.writeStringField("digest", book.digest());
    json.writeObjectFieldStart("read");
    json.writeNumberField("rules", book.rules().size());
    json.writeNumberField("limits", book.limits().size());
    json.writeNumberField("findings", book.findings().size());
    json.writeNumberField("sources", book.sources().size());
    json.writeNumberField("sentences", book.instructions().size());
    json.writeNumberField("words", book.glossary().size());
    json.writeEndObject();
    json.writeObjectFieldStart("run");
    json.writeNumberField("cases", check.cases());
    json.writeNumberField("feet", check.feet());
    json.writeEndObject();
    switch (check.reach()) {
      case RUN -> json.writeNullField("notRun");
      case FAULTY -> json.writeStringField("notRun", "faulty");
      case UNTRUSTED -> json.writeStringField("notRun", "not-trusted");
    }
    json.writeArrayFieldStart("faults");
    for (RuleFault fault : check.faults()) {
      fault(fault, json);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void fault(RuleFault fault, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("file", fault.file());
    json.writeNumberField("line", fault.line());
    json.writeStringField("rule", fault.rule());
    json.writeStringField("says", fault.says());
    json.writeStringField("cure", fault.cure());
    json.writeEndObject();
  }
}
