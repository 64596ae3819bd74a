package hornbook.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.VersionNote;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.read.VersionNotes;
import hornbook.rules.Shipped;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.ExerciseLibrary;
import hornbook.study.exercise.OtherView;
import hornbook.study.exercise.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every sentence the program can print: what it takes from its data (rules, findings, limits, job
 * sheets, words explained, names of fields and how to look), the teaching cases, and every text
 * written in its code: help, faults, messages, headings. Each is in words of today, one name for
 * one thing.
 */
class EverySentenceTest {
  private static final Pattern COMMENT = Pattern.compile("(?m)^\\s*(\\*|//|/\\*).*$");

  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");

  private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

  @Test
  void isShortAndInWordsOfToday() {
    Map<String, String> all = sentences();
    assertThat(all).hasSizeGreaterThan(1000);
    assertThat(Wording.faults(all)).isEmpty();
  }

  private static Map<String, String> sentences() {
    Rulebook book = Shipped.BOOK;
    Map<String, String> all = new TreeMap<>();
    for (RuleEntry rule : book.rules().values()) {
      put(all, rule.id() + " title", rule.title());
      put(all, rule.id() + " says", rule.text().says());
      put(all, rule.id() + " meanwhile", rule.text().meanwhile());
      put(all, rule.id() + " why", rule.why());
      put(all, rule.id() + " silent", rule.silent());
    }
    book.findings().values().forEach(one -> put(all, "finding " + one.id(), one.label()));
    book.limits().forEach(one -> put(all, "limit " + one.id(), one.label()));
    book.instructions().values().forEach(one -> put(all, "sheet " + one.id(), one.says()));
    book.techniques().forEach(one -> put(all, "technique " + one.id(), one.label()));
    book.supports().forEach(one -> put(all, "support " + one.id(), one.label()));
    book.topics().forEach(one -> put(all, "topic " + one.title(), one.title()));
    book.glossary().forEach(one -> put(all, "glossary " + one.word(), one.says()));
    for (ReadingKind kind : ReadingKind.values()) {
      put(all, "reading " + kind.id(), kind.label());
    }
    fields(Fields.ASSESSMENT, "", all);
    return all;
  }

  /** Every teaching case: its title and story, what a teacher asks and what it teaches. */
  @Test
  void casesAreInTheSameWords() throws Exception {
    Map<String, String> all = new TreeMap<>();
    for (Exercise one :
        ExerciseLibrary.read(Shipped.EXERCISES, Vocabulary.of(Shipped.BOOK)).cases().values()) {
      put(all, one.name() + " case", String.join(" ", one.title() + ".", one.story()));
      put(all, one.name() + " asks", String.join(" ", one.asks()));
      put(all, one.name() + " notes", String.join(" ", one.notes()));
      for (OtherView view : one.differs()) {
        put(all, one.name() + " differs " + view.source() + " " + view.technique(), view.says());
      }
    }
    Shipped.ruleCases().forEach((name, one) -> put(all, name + " title", one.title()));
    assertThat(all).hasSizeGreaterThan(700);
    assertThat(Wording.faults(all)).isEmpty();
  }

  /** Every text in the code, pieces joined by a plus read as one. */
  @Test
  void textsOfTheCodeAreInTheSameWords() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        String code = COMMENT.matcher(Files.readString(file)).replaceAll("");
        Matcher text = TEXT.matcher(JOINED.matcher(code).replaceAll(""));
        while (text.find()) {
          if (text.group(1).contains(" ")) {
            put(all, file.getFileName() + " " + text.start(), text.group(1));
          }
        }
      }
    }
    assertThat(all).hasSizeGreaterThan(1000);
    assertThat(Wording.faults(all)).isEmpty();
  }

  /** What stands beside a limit: its place in a work, and what another author says. */
  @Test
  void placesAndDisputesOfLimitsAreInTheSameWords() {
    Map<String, String> all = new TreeMap<>();
    for (Limit limit : Shipped.BOOK.limits()) {
      String name = limit.id() + " " + limit.limbs() + " " + limit.age();
      put(all, "place " + name, limit.locator());
      for (Limit.Dispute dispute : limit.disputes()) {
        put(all, "dispute " + name + dispute.source() + dispute.value(), dispute.says());
      }
    }
    assertThat(all).hasSizeGreaterThan(300);
    assertThat(Wording.faults(all)).isEmpty();
  }

  /** What each version of the rule base changed. */
  @Test
  void changesAreInTheSameWords() throws Exception {
    Map<String, String> all = new TreeMap<>();
    for (VersionNote note : VersionNotes.read(Path.of("rules"))) {
      for (String says : note.says()) {
        put(all, "change " + note.version() + " " + all.size(), says);
      }
    }
    assertThat(all).hasSizeGreaterThan(30);
    assertThat(Wording.faults(all)).isEmpty();
  }

  /** What an editor shows beside a key of the advice, and what marks are given for. */
  @Test
  void schemaAndMarksAreInTheSameWords() throws IOException {
    Map<String, String> all = new TreeMap<>();
    String schema = "src/main/resources/hornbook/schema/hornbook-advice-1.schema.json";
    described(new ObjectMapper().readTree(Path.of(schema).toFile()), "schema", all);
    assertThat(all).hasSizeGreaterThan(25);
    JsonNode points =
        new YAMLMapper().readTree(Path.of("cases/marking.yaml").toFile()).get("points");
    points
        .fields()
        .forEachRemaining(
            one -> put(all, "marks " + one.getKey(), one.getValue().get("says").asText()));
    assertThat(Wording.faults(all)).isEmpty();
  }

  private static void described(JsonNode node, String path, Map<String, String> all) {
    JsonNode text = node.get("description");
    if (text != null && text.isTextual()) {
      put(all, path, text.asText());
    }
    node.fields()
        .forEachRemaining(one -> described(one.getValue(), path + "/" + one.getKey(), all));
  }

  private static void fields(FieldHolder holder, String path, Map<String, String> all) {
    for (Field field : holder.fields()) {
      String here = path + "/" + field.name();
      put(all, "label" + here, field.label());
      put(all, "how" + here, field.how());
      if (field.kind() instanceof FieldHolder inner) {
        fields(inner, here, all);
      }
    }
  }

  private static void put(Map<String, String> all, String where, String text) {
    if (text != null) {
      all.put(where, text);
    }
  }
}
