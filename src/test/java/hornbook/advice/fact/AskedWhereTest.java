package hornbook.advice.fact;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Question;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.rules.Shipped;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A field is asked for where an answer can change something, and not one field away from there. */
class AskedWhereTest {
  private static final String FOOT =
      """
      format: hornbook-assessment/1
      horse: {weight: 480 kg, work: sport, unwell: false}
      feet:
        - limb: left-fore
          lameness: 0
          shoeing: nailed
          measures: {bearingLength: 130 mm, width: 124 mm, toeToWidest: 65 mm}
          wall:
            - {side: medial, from: 0 mm, to: 60 mm, state: broken-away, height: 30 mm, moist: false}
            - {side: medial, from: 60 mm, to: 171 mm, state: sound, thickness: 8 mm}
            - {side: lateral, from: 0 mm, to: 171 mm, state: sound, thickness: 8 mm}
          cracks: []
      """;

  @ParameterizedTest(name = "{0} with {1}, not with {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "horse.species           | horse.weight=180 kg                     | horse.weight=480 kg",
        "horse.species           | horse.weight=180 kg; horse.unwell=true  | horse.weight=480 kg; horse.unwell=true",
        "horse.worksInDays       | horse.work=sport                        | horse.work=rest",
        "horse.worksInDays       | horse.work=sport                        | feet[0].wall[0].state=sound",
        "care.presentShoe        | feet[0].lameness=2                      | feet[0].lameness=0",
        "care.presentShoe        | feet[0].lameness=2                      | feet[0].lameness=2; feet[0].shoeing=unshod",
        "care.presentShoe        | feet[0].measures.toeAngle=50 deg; feet[0].measures.heelAngle=38 deg |"
            + " feet[0].measures.toeAngle=50 deg; feet[0].measures.heelAngle=49 deg",
        "care.pad                | feet[0].lameness=2                      | feet[0].lameness=0",
        "care.pad                | feet[0].signs.testerPain=[nail]         | feet[0].signs.testerPain=[]",
        "care.pad                | feet[0].lameness=2                      | feet[0].lameness=2; feet[0].shoeing=unshod",
        "care.studs              | feet[0].shoeing=nailed                  | feet[0].shoeing=unshod",
        "care.studs              | feet[0].shoeing=nailed                  | feet[0].wall[0].state=sound",
        "care.studs              | horse.work=sport                        | horse.work=rest",
        "care.wallGoneDays       | feet[0].wall[0].height=30 mm            | feet[0].wall[0].height=12 mm",
        "care.wallGoneDays       | feet[0].wall[0].state=broken-away       | feet[0].wall[0].state=sound",
        "care.hornSince          | feet[0].care.wallGoneDays=60            | feet[0].care.wallGoneDays=14",
        "care.hornSince          | feet[0].care.wallGoneDays=60            |"
            + " feet[0].care.wallGoneDays=60; feet[0].wall[0].state=sound"
      })
  void is_asked_there_and_not_one_field_away(String field, String there, String away) {
    assertThat(asked(there)).anyMatch(one -> one.endsWith(field));
    assertThat(asked(away)).noneMatch(one -> one.endsWith(field));
  }

  private static Set<String> asked(String changes) {
    List<Setting> set = Arrays.stream(changes.split("; ")).map(Setting::parse).toList();
    byte[] file = FOOT.getBytes(StandardCharsets.UTF_8);
    ReadResult.Good read = (ReadResult.Good) AssessmentReader.read(file, "", set);
    return Shipped.ADVISOR.advise(read.assessment()).feet().get(0).questions().stream()
        .filter(one -> one.worth().changesAdvice())
        .map(Question::field)
        .collect(Collectors.toSet());
  }
}
