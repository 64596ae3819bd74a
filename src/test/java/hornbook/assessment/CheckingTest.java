package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.assessment.read.CaseFile;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.FieldPath;
import hornbook.assessment.tree.Place;
import hornbook.assessment.word.TesterSite;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckingTest {
  @ParameterizedTest
  @MethodSource("hornbook.assessment.FaultCatalogue#all")
  void namesTheOneFaultOfAFile(FaultCatalogue.Case broken) {
    assertThat(Read.faults(broken.text()))
        .singleElement()
        .asString()
        .startsWith("foot.yaml" + broken.message());
  }

  @Test
  void nearestOfAMisplacedFieldIsWhereItBelongs() {
    assertThat(Read.faults(Read.foot("digitalPulse: normal")))
        .singleElement()
        .asString()
        .endsWith("; nearest: feet[].signs.digitalPulse");
  }

  @Test
  void nearestOverlooksHyphensAndCapitals() {
    assertThat(Read.faults(Read.foot("lame-since-shod: no", "shoeing: NAILED")))
        .satisfiesExactly(
            fault -> assertThat(fault).endsWith("; nearest: lameSinceShod"),
            fault -> assertThat(fault).endsWith("; nearest: nailed"));
  }

  @Test
  void readsYesAndNoAsPeopleWriteThem() {
    Signs signs =
        Read.good(
                Read.foot(
                    "signs: {hoofHeat: Yes, soleBulge: no, crushed: TRUE, bloodAtNail: False}"))
            .feet()
            .get(0)
            .signs();
    assertThat(signs.hoofHeat()).isTrue();
    assertThat(signs.soleBulge()).isFalse();
    assertThat(signs.crushed()).isTrue();
    assertThat(signs.bloodAtNail()).isFalse();
  }

  /** The word unknown, and nothing at all, say the same in every field that is not required. */
  @ParameterizedTest
  @ValueSource(strings = {"unknown", "\"unknown\"", "~", "", "null"})
  void unknownMayStandInEveryField(String unknown) {
    StringBuilder text =
        new StringBuilder("format: hornbook-assessment/1\nfeet:\n  - limb: left-fore\n");
    unknown(Fields.FEET, "    ", unknown, text);
    unknown(Fields.ASSESSMENT, "", unknown, text);
    assertThat(Read.good(text.toString())).isEqualTo(Read.good(Read.foot("signs: {}")));
  }

  private static void unknown(FieldHolder holder, String indent, String word, StringBuilder text) {
    for (Field field : holder.fields()) {
      if (!field.required() && field.kind() instanceof FieldGroup group) {
        text.append(indent).append(field.name()).append(":\n");
        unknown(group, indent + "  ", word, text);
      } else if (!field.required()) {
        text.append(indent).append(field.name()).append(": ").append(word).append('\n');
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"unknown", "~", "", "{}"})
  void aWholeGroupMayBeUnknown(String unknown) {
    String text = "horse: " + unknown + "\n" + Read.foot("measures: " + unknown);
    assertThat(Read.good(text)).isEqualTo(Read.good(Read.foot("signs: {}")));
  }

  @Test
  void anEmptyListOfWhatWasLookedForIsNoneAndAnEmptyMapOfTheWallIsNoMap() {
    String text = Read.foot("wall: []", "cracks: []", "signs: {testerPain: []}");
    Foot foot = Read.good(text).feet().get(0);
    assertThat(foot.cracks()).isEmpty();
    assertThat(foot.signs().testerPain()).isEmpty();
    assertThat(foot.wall()).isNull();
  }

  @Test
  void noneIsAnEmptyListAndAWordAListOfOne() {
    String text =
        "kit: {shoeSizes: none}\n" + Read.foot("cracks: none", "signs: {testerPain: nail}");
    Assessment read = Read.good(text);
    assertThat(read.kit().shoeSizes()).isEmpty();
    assertThat(read.feet().get(0).cracks()).isEmpty();
    assertThat(read.feet().get(0).signs().testerPain()).containsExactly(TesterSite.NAIL);
    String none = Read.foot("signs: {testerPain: none}");
    assertThat(Read.good(none).feet().get(0).signs().testerPain()).isEmpty();
  }

  @Test
  void bareNumbersAreInTheUnitOfTheField() {
    String text =
        "horse: {girth: 184, weight: 470}\nkit: {wrap: {rollLength: 3.6, width: 50}}\n"
            + Read.foot("measures: {toeLength: 96, toeAngle: 46}");
    Assessment read = Read.good(text);
    assertThat(read.horse().girth()).isEqualTo(1840);
    assertThat(read.horse().weight()).isEqualTo(470);
    assertThat(read.kit().wrap().rollLength()).isEqualTo(3600);
    assertThat(read.feet().get(0).measures().toeLength()).isEqualTo(96);
  }

  @Test
  void inchesAndPoundsAreTheSameFoot() {
    String metric = Read.foot("measures: {toeLength: 92.075 mm, toeAngle: 47}");
    String inch = Read.foot("measures: {toeLength: 3 5/8 in, toeAngle: 47\u00b0}");
    assertThat(Read.good(inch)).isEqualTo(Read.good(metric));
  }

  /** Counted from the first of the year, a foal of 240 days may already be called one. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "ageDays: 240, ageYears: 0", "ageDays: 240, ageYears: 1", "ageDays: 800, ageYears: 2",
        "ageDays: 365, ageYears: 2", "ageDays: 730, ageYears: 1", "ageDays: 0, ageYears: 0"
      })
  void agesThatCanBothBeSo(String ages) {
    assertThat(Read.good("horse: {" + ages + "}\n" + Read.foot("brushing: no"))).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "wall: [{from: 10, to: 60}, {from: 20, to: 50}]",
        "wall: [{side: medial, from: 0, to: 60}, {side: lateral, from: 0, to: 60}]",
        "wall: [{side: medial, from: 60, to: 90}, {side: medial, from: 0, to: 60}]",
        "wall: [{side: medial, from: 0}, {side: medial, to: 60}]",
        "wall: [{side: medial, from: 0, to: 400}]",
        "measures: {toeToWidest: 130, bearingLength: 130}",
        "measures: {heelLength: 90, toeLength: 80}"
      })
  void whatIsUnknownContradictsNothing(String foot) {
    assertThat(Read.good(Read.foot(foot))).isNotNull();
  }

  @Test
  void aStretchThatSpansSeveralIsHeldAgainstEachOfThem() {
    String text =
        Read.foot(
            "wall:",
            "  - {side: medial, from: 0, to: 100}",
            "  - {side: medial, from: 10, to: 20}",
            "  - {side: medial, from: 50, to: 120}");
    assertThat(Read.faults(text))
        .satisfiesExactly(
            fault ->
                assertThat(fault).contains("wall[1].from: found 10 mm, inside feet[0].wall[0]"),
            fault ->
                assertThat(fault).contains("wall[2].from: found 50 mm, inside feet[0].wall[0]"));
  }

  @Test
  void aBrokenRowDoesNotShiftTheOthers() {
    String text =
        Read.foot("wall: [medial, {side: medial, from: 9, to: 5}]", "cracks: [{place: here}]");
    assertThat(Read.faults(text))
        .satisfiesExactly(
            fault -> assertThat(fault).contains(":4:12: feet[0].wall[0]: found \"medial\""),
            fault -> assertThat(fault).contains(":4:48: feet[0].wall[1].to: found 5 mm"),
            fault -> assertThat(fault).contains(":5:22: feet[0].cracks[0].place: found \"here\""));
  }

  /** Numbers no machine word holds, out of which nothing can be computed. */
  @ParameterizedTest
  @ValueSource(strings = {"1e999", "9in", "-9 ft", "9/9 in", "9 kg", "9.9"})
  void numbersBeyondReckoningAreRefused(String number) {
    String huge = number.replace("9", "9".repeat(400)).replace("e" + "9".repeat(1200), "e999");
    assertThat(Read.faults(Read.foot("measures: {toeLength: " + huge + "}")))
        .singleElement()
        .asString()
        .contains("feet[0].measures.toeLength: found \"");
    assertThat(Read.faults(Read.foot("lameness: " + huge))).hasSize(1);
  }

  @Test
  void aCaseFileIsReadWithWhatStandsRoundIt() {
    String text =
        "title: A torn toe\nstory: unknown\nexpected: {left-fore: {first: nail-on}}\nassessment:\n  "
            + Read.foot("lameness: 1").replace("\n", "\n  ");
    ReadResult.Good good = (ReadResult.Good) Read.result(text);
    CaseFile file = good.caseFile().orElseThrow();
    assertThat(file.title()).isEqualTo("A torn toe");
    assertThat(file.story()).isNull();
    assertThat(file.teaching()).isNull();
    assertThat(file.expected().path()).isEqualTo("expected");
    assertThat(good.tree().at(FieldPath.parse("feet[0].lameness")).path())
        .isEqualTo("feet[0].lameness");
    assertThat(good.tree().at(FieldPath.parse("feet[0].lameness")).place())
        .isEqualTo(new Place("foot.yaml", 8, 17));
    assertThat(good.tree().at(FieldPath.parse("feet[1].lameness"))).isNull();
    assertThat(good.tree().at(FieldPath.parse("horse[0]"))).isNull();
  }

  @Test
  void aNameOutOfAFileCannotUpsetATerminal() {
    String text = "{\"\\u001b[2J\": 1, \"feet\": \"\\u001b[31m\"}";
    List<String> faults = Read.faults(text);
    assertThat(String.join("", faults)).contains("\\u001b[2J").doesNotContain("\u001b");
  }
}
