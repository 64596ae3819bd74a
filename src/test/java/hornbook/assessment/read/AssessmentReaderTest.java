package hornbook.assessment.read;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.Read;
import hornbook.assessment.ShoeSize;
import hornbook.assessment.Side;
import hornbook.assessment.TetanusCover;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class AssessmentReaderTest {
  @Test
  void readsTheWholeFormat() {
    Assessment read = Read.good(Read.full());

    assertThat(read.horse().weight()).isEqualTo(470);
    assertThat(read.horse().girth()).isEqualTo(1840);
    assertThat(read.horse().tetanusCover()).isEqualTo(TetanusCover.CURRENT);
    assertThat(read.visit().date()).isEqualTo(LocalDate.of(2026, 3, 14));
    Foot foot = read.foot(Limb.LEFT_FORE).orElseThrow();
    assertThat(foot.measures().toeAngle()).isEqualTo(46);
    assertThat(foot.wall()).hasSize(4);
    assertThat(foot.wall().get(2))
        .isEqualTo(
            new WallStretch(
                Side.LATERAL,
                0.0,
                30.0,
                WallState.BROKEN_AWAY,
                30.0,
                null,
                null,
                false,
                null,
                null));
    assertThat(foot.signs().testerPain()).isEmpty();
    assertThat(foot.signs().suddenEase()).isFalse();
    assertThat(foot.signs().crushed()).isNull();
    assertThat(read.kit().wrap().rollLength()).isEqualTo(3600);
    assertThat(read.kit().shoeSizes())
        .containsExactly(new ShoeSize("1", 118.0), new ShoeSize("2", 125.0));
  }

  @Test
  void whatIsLeftOutIsUnknownAndNotNo() {
    Assessment read = Read.good(Read.foot("lameness: 0"));

    assertThat(read.horse().work()).isNull();
    assertThat(read.feet().get(0).signs().hoofHeat()).isNull();
    assertThat(read.feet().get(0).signs().testerPain()).isNull();
    assertThat(read.feet().get(0).cracks()).isNull();
    assertThat(read.feet().get(0).wall()).isNull();
    assertThat(read.kit().shoeSizes()).isNull();
  }

  @Test
  void allFaultsComeAtOnceInTheOrderOfTheFile() {
    String text = Read.full().replace("racing  ", "raceing ").replace("toeLength", "toeLenght");

    List<String> faults = Read.faults(text.replace("hoofHeat: false", "hoofHeat: maybe"));

    assertThat(faults).hasSize(3);
    assertThat(faults.get(0))
        .isEqualTo(
            "foot.yaml:8:9: horse.work: found \"raceing\"; allowed: rest, light, sport, racing,"
                + " draught, breeding or unknown; nearest: racing");
    assertThat(faults.get(1)).startsWith("foot.yaml:29:7: feet[0].measures.toeLenght: found");
    assertThat(faults.get(1)).endsWith("nearest: toeLength");
    assertThat(faults.get(2)).contains("feet[0].signs.hoofHeat: found \"maybe\"");
  }
}
