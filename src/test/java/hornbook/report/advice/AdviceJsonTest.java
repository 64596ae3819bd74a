package hornbook.report.advice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion.VersionFlag;
import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.report.Pages;
import hornbook.rules.Shipped;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AdviceJsonTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(VersionFlag.V202012)
          .getSchema(
              schema(), SchemaValidatorsConfig.builder().formatAssertionsEnabled(true).build());

  private static JsonNode schema() {
    try (InputStream in = AdviceJson.class.getResourceAsStream(AdviceJson.SCHEMA)) {
      return JSON.readTree(in);
    } catch (java.io.IOException missing) {
      throw new java.io.UncheckedIOException(missing);
    }
  }

  @Test
  void the_schema_is_one() {
    JsonSchema ofSchemas =
        JsonSchemaFactory.getInstance(VersionFlag.V202012)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(ofSchemas.validate(schema())).isEmpty();
  }

  @Test
  void keeps_to_the_schema() throws Exception {
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      for (Units units : Units.values()) {
        keepsToTheSchema(one, units);
      }
    }
    int number = 0;
    for (Map.Entry<String, Advice> one : Pages.ruleCases().entrySet()) {
      keepsToTheSchema(one, Units.values()[number++ % Units.values().length]);
    }
  }

  private static void keepsToTheSchema(Map.Entry<String, Advice> one, Units units)
      throws Exception {
    JsonNode json = JSON.readTree(AdviceJson.line(one.getValue(), units));
    assertThat(SCHEMA.validate(json)).as(one.getKey() + " " + units).isEmpty();
  }

  @Test
  void the_schema_can_refuse() throws Exception {
    String good = AdviceJson.line(Pages.advice("torn-toe"), Units.MM);
    for (String broken :
        List.of(
            good.replaceFirst(
                "\"verdict\":\"ruled-out\"|\"verdict\":\"workable\"", "\"verdict\":\"fine\""),
            good.replaceFirst("\"value\":480", "\"value\":\"480\""),
            good.replaceFirst("\"basis\":\"", "\"ground\":\""),
            good.replaceFirst("\"unit\":\"mm\"", "\"unit\":\"MM\""))) {
      assertThat(broken).isNotEqualTo(good);
      assertThat(SCHEMA.validate(JSON.readTree(broken))).as(broken.substring(0, 80)).isNotEmpty();
    }
  }

  @Test
  void lists_every_technique_and_support_on_every_foot_in_their_order() throws Exception {
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      JsonNode json = JSON.readTree(AdviceJson.line(one.getValue(), Units.MM));
      assertThat(json.get("feet")).hasSameSizeAs(one.getValue().feet());
      for (JsonNode foot : json.get("feet")) {
        assertThat(words(foot, "techniques", "technique"))
            .isEqualTo(Shipped.BOOK.techniques().stream().map(named -> named.id()).toList());
        assertThat(words(foot, "supports", "support"))
            .isEqualTo(Shipped.BOOK.supports().stream().map(named -> named.id()).toList());
        List<String> verdicts = words(foot, "techniques", "verdict");
        boolean now = foot.get("urgency").asText().equals("now");
        assertThat(verdicts.stream().filter("first-choice"::equals).count())
            .as(one.getKey())
            .isLessThanOrEqualTo(now ? 0 : 1);
        assertThat(foot.get("firstChoice").isNull()).isEqualTo(!verdicts.contains("first-choice"));
      }
    }
  }

  private static List<String> words(JsonNode foot, String list, String key) {
    List<String> words = new ArrayList<>();
    foot.get(list).forEach(one -> words.add(one.get(key).asText()));
    return words;
  }

  @Test
  void measures_carry_their_units() throws Exception {
    JsonNode mm = JSON.readTree(AdviceJson.line(Pages.advice("torn-toe"), Units.MM));
    JsonNode inch = JSON.readTree(AdviceJson.line(Pages.advice("torn-toe"), Units.INCH));
    assertThat(mm.get("bodyWeight").toString())
        .isEqualTo("{\"value\":480,\"unit\":\"kg\",\"how\":\"measured\"}");
    assertThat(inch.get("bodyWeight").toString())
        .isEqualTo("{\"value\":1058.2189,\"unit\":\"lb\",\"how\":\"measured\"}");
    assertThat(measure(mm, "toeLength").toString()).contains("\"value\":90,\"unit\":\"mm\"");
    assertThat(measure(inch, "toeLength").toString()).contains("\"value\":3.5433,\"unit\":\"in\"");
    assertThat(measure(mm, "toe-heel-angle-difference").toString())
        .contains("\"value\":6,\"unit\":\"deg\"")
        .contains("\"reading\":\"under-run-heels\"");
  }

  @Test
  void a_number_known_within_bounds_has_these_in_place_of_a_value() throws Exception {
    Advice half =
        Pages.read(
            "format: hornbook-assessment/1\n"
                + "feet: [{limb: left-fore, measures: {bearingLength: 128 mm, width: 124 mm},"
                + " wall: [{side: medial, from: 0 mm, to: 170 mm, state: sound}]}]\n");
    JsonNode json = JSON.readTree(AdviceJson.line(half, Units.MM));
    assertThat(measure(json, "sound-share").toString())
        .contains("\"value\":null,\"low\":")
        .contains(",\"high\":100,\"unit\":\"%\"");
    JsonNode height = measure(json, "tallest-defect");
    assertThat(height.get("low").asDouble()).isZero();
    assertThat(height.get("high").isNull()).isTrue();
  }

  private static JsonNode measure(JsonNode advice, String id) {
    for (JsonNode measure : advice.get("feet").get(0).get("measures")) {
      if (measure.get("id").asText().equals(id)) {
        return measure;
      }
    }
    throw new AssertionError("no measure " + id);
  }

  @Test
  void is_written_the_same_in_every_way() throws Exception {
    Advice advice = Pages.advice("two-feet");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    StringWriter words = new StringWriter();
    AdviceJson.write(advice, Units.MM, bytes);
    AdviceJson.write(advice, Units.MM, words);
    String text = bytes.toString(StandardCharsets.UTF_8);
    assertThat(text).isEqualTo(words.toString()).endsWith("}\n").startsWith("{\n  \"format\"");
    String line = AdviceJson.line(advice, Units.MM);
    assertThat(line).doesNotContain("\n");
    assertThat(JSON.readTree(text)).isEqualTo(JSON.readTree(line));
  }

  @Test
  void keeps_letters_beyond_ascii() throws Exception {
    Advice advice =
        Pages.read(
            "format: hornbook-assessment/1\nhorse: {name: \"Fjörð \\\"9\\\" \\U0001F434\"}\n"
                + "feet: [{limb: left-fore}]\n");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    AdviceJson.write(advice, Units.MM, bytes);
    assertThat(JSON.readTree(bytes.toByteArray()).get("horse").asText())
        .isEqualTo("Fjörð \"9\" \uD83D\uDC34");
    assertThat(bytes.toString(StandardCharsets.UTF_8)).contains("Fjörð");
  }
}
