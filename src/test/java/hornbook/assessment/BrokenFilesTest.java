package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FileText;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of which no sense can be made: refused with a place and in plain words. */
class BrokenFilesTest {
  private static final String GOOD = Read.foot("lameness: 1");

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n\n", "# only a remark\n"})
  void refusesAnEmptyFile(String text) {
    assertThat(Read.faults(text))
        .containsExactly("foot.yaml:1:1: found an empty file; allowed: an assessment");
  }

  @ParameterizedTest
  @ValueSource(strings = {"---\n", "---\n...\n", "~", "null"})
  void refusesADocumentOfNothing(String text) {
    assertThat(Read.faults(text))
        .singleElement()
        .asString()
        .endsWith(
            "found nothing; allowed: a group of fields: format, units, horse, visit, feet, kit");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          just some words | foot.yaml:1:1: found "just some words"
          - a             | foot.yaml:1:1: found a list
          unknown         | foot.yaml:1:1: found "unknown"
          [1, 2]          | foot.yaml:1:1: found a list
          """)
  void refusesWhatIsNoGroup(String text, String start) {
    assertThat(Read.faults(text)).singleElement().asString().startsWith(start);
  }

  @Test
  void refusesMoreThanFourMegabytes() {
    byte[] bytes = (GOOD + "#".repeat(FileText.LARGEST)).getBytes(StandardCharsets.UTF_8);
    assertThat(faults(bytes)).singleElement().asString().contains("up to 4194304 bytes");
  }

  @Test
  void readsUpToFourMegabytes() {
    String text = GOOD + "#".repeat(FileText.LARGEST - GOOD.length());
    assertThat(Read.good(text).feet().get(0).lameness()).isEqualTo(1);
  }

  @Test
  void readsAByteOrderMark() {
    assertThat(Read.good("\ufeff" + GOOD).feet()).hasSize(1);
    assertThat(
            Read.good(
                    "\ufeff"
                        + "{\"format\": \"hornbook-assessment/1\", \"feet\": [{\"limb\": \"left-hind\"}]}")
                .feet())
        .hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-32"})
  void refusesOtherEncodings(String encoding) {
    assertThat(faults(("\ufeff" + GOOD).getBytes(Charset.forName(encoding))))
        .singleElement()
        .asString()
        .contains("text in UTF-8");
  }

  @Test
  void refusesNulAndSaysWhere() {
    assertThat(Read.faults(GOOD + "kit: \0\n"))
        .containsExactly(
            "foot.yaml:5:6: found the control character U+0000; allowed: text in UTF-8");
  }

  @Test
  void refusesInvalidUtf8AndSaysWhere() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes((GOOD + "horse: {name: K\u00e4the }").getBytes(StandardCharsets.ISO_8859_1));
    assertThat(faults(bytes.toByteArray()))
        .containsExactly("foot.yaml:5:16: found bytes that are no text; allowed: text in UTF-8");
  }

  @Test
  void refusesTextCutInTheMiddleOfALetter() {
    byte[] whole = (GOOD + "# K\u00e4").getBytes(StandardCharsets.UTF_8);
    assertThat(faults(java.util.Arrays.copyOf(whole, whole.length - 1)))
        .containsExactly("foot.yaml:5:4: found bytes that are no text; allowed: text in UTF-8");
  }

  @Test
  void refusesTheSameFieldTwiceWithBothPlaces() {
    String text = GOOD + "    lameness: 2\n    lameness: 2\n";
    assertThat(Read.faults(text))
        .containsExactly(
            "foot.yaml:5:5: feet[0].lameness: found a second \"lameness\", first at line 4, column"
                + " 5; allowed: each field once",
            "foot.yaml:6:5: feet[0].lameness: found a second \"lameness\", first at line 4, column"
                + " 5; allowed: each field once");
    String json =
        "{\"format\": \"hornbook-assessment/1\",\n \"format\": \"x\",\n"
            + " \"feet\": [{\"limb\": \"left-hind\"}]}";
    assertThat(Read.faults(json))
        .containsExactly(
            "foot.yaml:2:2: format: found a second \"format\", first at line 1, column 2; allowed:"
                + " each field once");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      textBlock =
          """
          horse:\\n\\tname: x|:2:1: found a tab at the start of a line
          horse: [a|:1:10: found a bracket [ that is not closed
          horse: {a: 1|:1:13: found a brace { that is not closed
          horse: {a: 1,\\n  b: 2|:2:7: found a brace { that is not closed, or a comma left out (begun at line 1)
          horse: [a,, b]|:1:11: found a comma or bracket where a value should stand
          horse: 1\\n]|:2:1: found a line set in differently from those it belongs to (begun at line 1)
          [a]\\nb|:2:1: found more after the end
          horse: & a|:1:9: found a name for a repeat
          horse: "a|:1:10: found a quote that is not closed
          horse: "a\\u|:1:12: found a quote that is not closed
          horse: a: b|:1:9: found a second colon on the line
          horse: 1\\nvisit|:2:6: found a line without a colon
          horse: @x|:1:8: found a character no value can begin with
          a: 1\\n---\\nb: 2|:2:1: found a second document
          a: !!int 3|:1:4: found the tag
          a: !lame 3|:1:4: found the tag
          ? [a]\\n: b|:1:3: found a group or list as a key
          a: *x|:1:4: found *x
          a: &x [*x]|:1:8: found *x
          horse:\\n  name: x\\n visit: 3|:3:2: found a line set in differently
          """)
  void saysWhatIsNotYaml(String text, String start) {
    assertThat(Read.faults(text.replace("\\n", "\n").replace("\\t", "\t")))
        .singleElement()
        .asString()
        .startsWith("foot.yaml" + start);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      textBlock =
          """
          {"a": 1,}|:1:9: found a closing brace or bracket too soon
          {"a": 1|:1:8: found the end, with a brace
          {"a": yes}|:1:7: found a bare word
          {a: 1}|:1:2: found a character out of place
          {"a" 1}|:1:6: found a character out of place
          {"a": "x\\ny"}|:1:9: found a line break or tab inside double quotes
          {"a": 1} {"b": 2}|:1:10: found more after the end
          {"a": 007}|:1:8: found text that is not JSON
          """)
  void saysWhatIsNotJson(String text, String start) {
    assertThat(Read.faults(text.replace("\\n", "\n")))
        .singleElement()
        .asString()
        .startsWith("foot.yaml" + start);
  }

  @Test
  void readsJsonSetInWithTabs() {
    String json =
        "\t{\n\t\"format\":\t\"hornbook-assessment/1\",\n\t\"feet\": [{\"limb\":\"left-hind\"}]}";
    assertThat(Read.good(json).feet().get(0).limb()).isEqualTo(Limb.LEFT_HIND);
  }

  @ParameterizedTest
  @ValueSource(ints = {33, 5_000, 1_000_000})
  void refusesWhatIsNestedTooDeep(int depth) {
    String yaml = "horse: " + "[".repeat(depth);
    assertThat(Read.faults(yaml)).singleElement().asString().contains("more than 32 levels");
    String json = "{\"horse\": " + "[".repeat(depth);
    assertThat(Read.faults(json)).singleElement().asString().contains("more than 32 levels");
    String block = "- ".repeat(Math.min(depth, 900)) + "a";
    assertThat(Read.faults(block)).singleElement().asString().contains("more than 32 levels");
  }

  @Test
  void refusesRepeatsThatGrowOutOfHand() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 12; i++) {
      String repeat = "*a" + (i - 1);
      List<String> ten = java.util.Collections.nCopies(10, repeat);
      bomb.append("a" + i + ": &a" + i + " [" + String.join(", ", ten) + "]\n");
    }
    assertThat(Read.faults(bomb.toString()))
        .singleElement()
        .asString()
        .contains("more than 20000 values");
  }

  @Test
  void refusesRepeatsThatNestTooDeep() {
    StringBuilder deep = new StringBuilder("a0: &a0 [x]\n");
    for (int i = 1; i < 40; i++) {
      deep.append("a" + i + ": &a" + i + " [*a" + (i - 1) + "]\n");
    }
    assertThat(Read.faults(deep.toString()))
        .singleElement()
        .asString()
        .contains("more than 32 levels");
  }

  @Test
  void readsARepeatWithinBounds() {
    String text =
        Read.foot("measures: &m {toeLength: 90 mm}") + "  - {limb: right-fore, measures: *m}\n";
    assertThat(Read.good(text).feet())
        .extracting(foot -> foot.measures().toeLength())
        .containsExactly(90.0, 90.0);
  }

  @Test
  void refusesMoreValuesThanAnyAssessmentHas() {
    assertThat(Read.faults("horse: [" + "1, ".repeat(20_001) + "]"))
        .singleElement()
        .asString()
        .contains("more than 20000 values");
  }

  @Test
  void refusesEndlessNames() {
    assertThat(Read.faults("{\"" + "a".repeat(3_000_000) + "\": 1}"))
        .singleElement()
        .asString()
        .contains("a name of at most 100 letters")
        .hasSizeLessThan(200);
  }

  private static List<String> faults(byte[] bytes) {
    ReadResult result = AssessmentReader.read(bytes, "foot.yaml", List.of());
    return ((ReadResult.Faulty) result).faults().stream().map(Fault::message).toList();
  }
}
