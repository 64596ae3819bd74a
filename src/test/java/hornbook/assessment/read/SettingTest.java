package hornbook.assessment.read;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.Read;
import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.DigitalPulse;
import hornbook.assessment.word.TesterSite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingTest {
  @Test
  void changesAField() {
    Foot foot = foot("feet[0].signs.digitalPulse=bounding", "feet[left-fore].lameness = 4");
    assertThat(foot.signs().digitalPulse()).isEqualTo(DigitalPulse.BOUNDING);
    assertThat(foot.lameness()).isEqualTo(4);
    assertThat(foot.signs().hoofHeat()).isFalse();
  }

  @Test
  void unknownTakesAFieldOut() {
    assertThat(foot("feet[0].lameness=unknown").lameness()).isNull();
    assertThat(foot("feet[0].wall=unknown").wall()).isNull();
    assertThat(foot("feet[0].wall[1]=unknown").wall()).hasSize(3);
    assertThat(foot("feet[0].signs=unknown").signs().hoofHeat()).isNull();
  }

  @Test
  void readsLists() {
    assertThat(foot("feet[0].signs.testerPain=[toe, nail]").signs().testerPain())
        .containsExactly(TesterSite.TOE, TesterSite.NAIL);
    assertThat(foot("feet[0].signs.testerPain=[]").signs().testerPain()).isEmpty();
    assertThat(foot("feet[0].cracks=none").cracks()).isEmpty();
  }

  @Test
  void readsQuantitiesAndQuotes() {
    assertThat(foot("feet[0].measures.toeLength=3.5\"").measures().toeLength()).isEqualTo(88.9);
    assertThat(foot("feet[0].measures.toeLength=\"3 5/8 in\"").measures().toeLength())
        .isEqualTo(92.075);
    assertThat(Read.good(Read.full(), "horse.name='Ash: the = second'").horse().name())
        .isEqualTo("Ash: the = second");
  }

  @Test
  void makesGroupsRowsAndFeetThatWereNotThere() {
    String bare = Read.foot("lameness: 1");
    Assessment read =
        Read.good(
            bare,
            "horse.weight=500",
            "kit.shoe.thickness=10 mm",
            "feet[0].wall[0].side=medial",
            "feet[0].wall[0].to=40",
            "feet[right-fore].measures.toeAngle=50");
    assertThat(read.horse().weight()).isEqualTo(500);
    assertThat(read.kit().shoe().thickness()).isEqualTo(10);
    assertThat(read.feet().get(0).wall())
        .containsExactly(
            new WallStretch(Side.MEDIAL, null, 40.0, null, null, null, null, null, null, null));
    assertThat(read.foot(Limb.RIGHT_FORE).orElseThrow().measures().toeAngle()).isEqualTo(50);
  }

  @Test
  void theLastOfSeveralCounts() {
    assertThat(foot("feet[0].lameness=4", "feet[0].lameness=3").lameness()).isEqualTo(3);
  }

  @Test
  void changesTheAssessmentInsideACaseFile() {
    String text = "title: x\nassessment:\n  " + Read.foot("lameness: 1").replace("\n", "\n  ");
    assertThat(Read.good(text, "feet[0].lameness=3").feet().get(0).lameness()).isEqualTo(3);
  }

  @Test
  void mendsAFileBeforeItIsChecked() {
    assertThat(Read.faults(Read.foot("lameness: 9"))).hasSize(1);
    assertThat(Read.good(Read.foot("lameness: 9"), "feet[0].lameness=3")).isNotNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          nonsense                      | --set found "nonsense"; allowed: path=value, such as
          =3                            | --set found "=3"; allowed: path=value
          feet[0=3                      | --set found "feet[0=3"; allowed: path=value
          feet[middle].lameness=3       | --set found "feet[middle].lameness=3"; allowed: path=value
          horse..name=x                 | --set found "horse..name=x"; allowed: path=value
          feet[0].lameness=9            | --set feet[0].lameness: found "9"; allowed: a whole number
          feet[0].lamenes=3             | --set feet[0].lamenes: found the unknown field "lamenes"
          feet[0].signs.testerPain=[ab] | --set feet[0].signs.testerPain[0]: found "ab"; allowed:
          feet[3].lameness=3            | --set feet[3]: found row 3 of a list of 1; allowed: rows 0 to 1
          feet[1].lameness=3            | --set feet[1].limb: found nothing; allowed: left-fore
          feet[0].limb=unknown          | foot.yaml:20:5: feet[0].limb: found nothing; allowed: left-fore
          horse[0].name=x               | --set horse: found a list; allowed: a group of fields
          horse.name.first=x            | --set horse.name: found a group of fields; allowed: a text
          feet[0].lameness[0]=1         | --set feet[0].lameness: found a list; allowed: a whole number
          """)
  void namesTheSettingThatIsWrong(String setting, String start) {
    assertThat(Read.faults(Read.full(), setting)).singleElement().asString().startsWith(start);
  }

  @Test
  void faultsOfSettingsComeBehindThoseOfTheFileInTheOrderGiven() {
    String text = Read.foot("lameness: 9");
    assertThat(Read.faults(text, "feet[0].onset=x", "horse.work=y"))
        .satisfiesExactly(
            fault -> assertThat(fault).startsWith("foot.yaml:4:15"),
            fault -> assertThat(fault).startsWith("--set feet[0].onset"),
            fault -> assertThat(fault).startsWith("--set horse.work"));
  }

  private static Foot foot(String... set) {
    return Read.good(Read.full(), set).feet().get(0);
  }
}
