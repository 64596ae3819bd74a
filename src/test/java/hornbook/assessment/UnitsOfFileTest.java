package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A number without a unit: the inch is 25.4 mm, the pound 0.45359237 kg (1959 agreement). */
class UnitsOfFileTest {
  private static final String FOOT =
      """
      format: hornbook-assessment/1
      %s
      horse: {weight: %s}
      feet:
        - limb: left-fore
          measures: {toeLength: %s, bearingLength: %s}
          wall: [{side: medial, from: 0, to: %s, state: sound, thickness: %s}]
      """;

  private static String foot(String units, String... values) {
    return FOOT.formatted(units, values[0], values[1], values[2], values[3], values[4]);
  }

  @Test
  void aFileWrittenInInchesIsReadInInches() {
    Assessment read = Read.good(foot("units: inch", "1150", "3.5", "5 1/8 in", "2", "0.35"));
    assertThat(read.units()).isEqualTo(Units.INCH);
    assertThat(read.horse().weight()).isCloseTo(521.6, within(0.1));
    Foot foot = read.feet().get(0);
    assertThat(foot.measures().toeLength()).isCloseTo(88.9, within(1e-9));
    assertThat(foot.wall().get(0).to()).isCloseTo(50.8, within(1e-9));
    assertThat(foot.wall().get(0).thickness()).isCloseTo(8.89, within(1e-9));
  }

  @Test
  void temperaturesAndRollsFollowTheFile() {
    Assessment read =
        Read.good(
            """
            format: hornbook-assessment/1
            units: inch
            visit: {airTemperature: 50}
            kit: {wrap: {rollLength: 12}}
            feet: [{limb: left-fore, measures: {toeAngle: 50}}]
            """);
    assertThat(read.visit().airTemperature()).isCloseTo(10, within(1e-6));
    assertThat(read.kit().wrap().rollLength()).isCloseTo(12 * 304.8, within(1e-6));
    assertThat(read.feet().get(0).measures().toeAngle()).isEqualTo(50);
  }

  @Test
  void aFileThatDoesNotSayKeepsItsMeaning() {
    Assessment read = Read.good(foot("", "521", "89", "130 mm", "50", "9"));
    assertThat(read.units()).isNull();
    assertThat(read.horse().weight()).isEqualTo(521);
    assertThat(read.feet().get(0).wall().get(0).thickness()).isEqualTo(9);
  }

  @Test
  void amongInchesABareNumberIsRefusedUnlessTheFileSaysItsUnits() {
    List<String> faults = Read.faults(foot("", "1150", "3.5 in", "5 1/8 in", "2 in", "0.35"));
    assertThat(faults).hasSize(2);
    assertThat(faults.get(0)).contains("horse.weight", "1150 without a unit", "units: inch");
    assertThat(faults.get(1)).contains("feet[0].wall[0].thickness", "0.35 without a unit");
    Assessment mixed = Read.good(foot("units: mm", "1150 lb", "3.5 in", "130", "50", "9"));
    assertThat(mixed.horse().weight()).isCloseTo(521.6, within(0.1));
    assertThat(mixed.feet().get(0).measures().bearingLength()).isEqualTo(130);
  }

  @Test
  void aSettingIsReadAsTheFileIs() {
    String text = foot("units: inch", "1150 lb", "3.5", "5", "2", "0.35");
    Assessment read = Read.good(text, "feet[0].measures.width=4.9");
    assertThat(read.feet().get(0).measures().width()).isCloseTo(124.46, within(1e-9));
  }

  @Test
  void aSettingInInchesLeavesTheFileItsMeaning() {
    Assessment read =
        Read.good(foot("", "521", "89", "130", "50", "9"), "feet[0].measures.width=4.9 in");
    assertThat(read.feet().get(0).measures().toeLength()).isEqualTo(89);
  }

  @Test
  void aBlankSaysItsUnits() {
    for (Units units : Units.values()) {
      String blank = BlankAssessment.write(List.of(Limb.LEFT_FORE), units, null);
      assertThat(blank).contains("units: " + units.word());
      assertThat(Read.good(blank).units()).isEqualTo(units);
    }
  }
}
