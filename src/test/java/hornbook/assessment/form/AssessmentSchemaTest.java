package hornbook.assessment.form;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion.VersionFlag;
import hornbook.assessment.AnyAssessment;
import hornbook.assessment.Assessment;
import hornbook.assessment.FaultCatalogue;
import hornbook.assessment.Limb;
import hornbook.assessment.Read;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.ReadResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The schema and the reader come to the same verdict, by an independent validator. */
class AssessmentSchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(VersionFlag.V202012)
          .getSchema(
              AssessmentSchema.text(),
              SchemaValidatorsConfig.builder().formatAssertionsEnabled(true).build());

  @Test
  void isASchemaItself() throws IOException {
    JsonSchema ofSchemas =
        JsonSchemaFactory.getInstance(VersionFlag.V202012)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(ofSchemas.validate(JSON.readTree(AssessmentSchema.text()))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("hornbook.assessment.FaultCatalogue#all")
  void refusesWhatTheReaderRefusesWhereItCan(FaultCatalogue.Case broken) throws IOException {
    assertThat(Read.result(broken.text())).isInstanceOf(ReadResult.Faulty.class);
    assertThat(accepts(broken.text())).isEqualTo(!broken.inSchema());
  }

  static List<String> good() {
    String format = "format: hornbook-assessment/1\n";
    return List.of(
        Read.full(),
        Read.foot("brushing: YES", "lameness: 2.0", "cracks: none", "wall: []"),
        Read.foot("measures: {toeLength: 3 5/8 in, heelLength: 1.5\", toeAngle: +46\u00b0}"),
        Read.foot("measures: {toeLength: '92,5 mm', toeAngle: 50\u00ba, width: 4 7/8''}"),
        Read.foot("wall: [{side: outer, from: 0, to: 9}, {side: inside}]", "lameSinceShod: Y"),
        format + "units: inches\nfeet: [{limb: near fore}, {limb: RF}]",
        Read.foot("measures: {toeLength: 96, palmarAngle: -3, soleDepth: 1.5e1}"),
        Read.foot("measures: {toeLength: \"\u00a096\u00a0mm \"}"),
        Read.foot("signs: {testerPain: toe}", "wall: unknown", "measures: ~"),
        format + "horse: {name: 42}\nvisit: {date: 2024-02-29}\nfeet: [{limb: left-hind}]",
        format + "kit: {shoeSizes: [{label: 1}, {label: true}]}\nfeet: [{limb: left-hind}]",
        format + "feet: [{limb: left-hind}, {limb: right-hind}, {limb: left-fore}]",
        "title: x\nteaching: [a]\nassessment: {" + format.strip() + ", feet: [{limb: left-hind}]}",
        BlankAssessment.write(List.of(Limb.values()), Units.MM, null));
  }

  @ParameterizedTest
  @MethodSource("good")
  void acceptsWhatTheReaderAccepts(String text) throws IOException {
    Read.good(text);
    assertThat(accepts(text)).isTrue();
  }

  @Test
  void acceptsEveryCaseThatComesWithTheProgram() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("cases"))) {
      Path scheme = Path.of("cases/marking.yaml");
      List<Path> cases =
          files.filter(one -> one.toString().endsWith(".yaml") && !one.equals(scheme)).toList();
      assertThat(cases).isNotEmpty();
      for (Path file : cases) {
        assertThat(accepts(Files.readString(file))).as(file.toString()).isTrue();
      }
    }
  }

  @Property(tries = 200)
  void agreesOnAnyAssessment(@ForAll("assessments") Assessment any) throws IOException {
    assertThat(accepts(BlankAssessment.write(any, Units.INCH, null))).isTrue();
  }

  @Provide
  net.jqwik.api.Arbitrary<Assessment> assessments() {
    return AnyAssessment.valid();
  }

  @Test
  void liesWhereTheBuildPutsIt(@TempDir Path folder) throws IOException {
    AssessmentSchema.main(new String[] {folder.resolve("schema").toString()});
    assertThat(folder.resolve("schema").resolve(AssessmentSchema.FILE))
        .hasContent(AssessmentSchema.text());
  }

  private static boolean accepts(String text) throws IOException {
    return SCHEMA.validate(node(text)).isEmpty();
  }

  private static JsonNode node(String text) throws IOException {
    if (text.startsWith("{")) {
      return JSON.readTree(text);
    }
    LoadSettings core = LoadSettings.builder().setSchema(new CoreSchema()).build();
    return JSON.valueToTree(new Load(core).loadFromString(text));
  }
}
