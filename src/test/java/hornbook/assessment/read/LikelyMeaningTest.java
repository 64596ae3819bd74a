package hornbook.assessment.read;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Limb;
import hornbook.assessment.Read;
import hornbook.assessment.Side;
import hornbook.record.AssessmentTree;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people write in place of what the format asks: taken, or answered with what to write. */
class LikelyMeaningTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          lameness: 3/5                       | nearest: 3
          lameness: 2 out of 5                | nearest: 2
          measures: {toeLength: "1,092 mm"}   | nearest: 1092 mm
          measures: {toeLength: 92,5 mm}      | nearest: 92.5 mm
          wall: [{side: outer, from: toe}]    | nearest: 0 mm
          wall: [{side: outer, to: heel}]     | by tape along the edge
          wall: [{side: oter}]                | nearest: lateral
          """)
  void aFaultNamesWhatToWrite(String line, String told) {
    assertThat(Read.faults(Read.foot(line))).singleElement().asString().contains(told);
  }

  @ParameterizedTest
  @CsvSource({
    "14/03/2026, 2026-03-14",
    "3/14/2026, 2026-03-14",
    "14.3.2026, 2026-03-14",
    "4/3/2026, 2026-03-04 or 2026-04-03",
    "05-05-2026, 2026-05-05"
  })
  void aDayNotWrittenYearFirst(String written, String meant) {
    assertThat(Read.faults(Read.foot() + "visit: {date: " + written + "}"))
        .singleElement()
        .asString()
        .endsWith("nearest: " + meant);
  }

  @Test
  void degreesOfAirAreOfOneScaleOrTheOther() {
    assertThat(Read.faults(Read.foot() + "visit: {airTemperature: 11 degrees}"))
        .singleElement()
        .asString()
        .endsWith("nearest: 11 C or 11 F");
  }

  @Test
  void otherSpellingsAreTakenAndKeptInTheUsualOne() {
    String text =
        Read.foot("lameSinceShod: Y", "wall: [{side: outer, from: 0 mm, to: '40,5 mm'}]")
            .replace("left-fore", "near fore");
    var foot = Read.good(text).feet().get(0);
    assertThat(foot.limb()).isEqualTo(Limb.LEFT_FORE);
    assertThat(foot.lameSinceShod()).isTrue();
    assertThat(foot.wall().get(0).side()).isEqualTo(Side.LATERAL);
    assertThat(foot.wall().get(0).to()).isEqualTo(40.5);
    var read =
        (ReadResult.Good)
            AssessmentReader.read(text.getBytes(StandardCharsets.UTF_8), "foot.yaml", List.of());
    assertThat(AssessmentTree.of(read.tree()).toString())
        .contains("\"limb\":\"left-fore\"", "\"side\":\"lateral\"");
  }

  @Test
  void aSettingFindsTheFootByAnySpelling() {
    String text = Read.foot("lameness: 0").replace("left-fore", "LF");
    assertThat(Read.good(text, "feet[left-fore].lameness=2").feet().get(0).lameness()).isEqualTo(2);
    assertThat(Read.good(text, "feet[near-fore].lameness=1").feet().get(0).lameness()).isEqualTo(1);
  }
}
