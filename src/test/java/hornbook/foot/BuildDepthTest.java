package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildDepthTest {

  /** Derived: bearing length x tan(angle). */
  @ParameterizedTest
  @CsvSource({"1, 1.75", "3, 5.24", "6, 10.51"})
  void aWedgeLiftsByItsTangentAndTurnsByItsAngle(double angle, double lift) {
    assertThat(BuildDepth.lift(100, angle)).isCloseTo(lift, within(0.005));
    SideProfile foot = Trade.profile(90, 30, 48, 100);
    SideProfile after = foot.with(BuildDepth.wedge(foot, angle));
    assertThat(after.toeAngle()).isCloseTo(48 + angle, within(1e-9));
    assertThat(after.toeLength()).isEqualTo(90);
    assertThat(after.hoofPasternDifference()).isCloseTo(angle - 2, within(1e-9));
  }

  /** Derived: depths that differ square to the ground turn it by atan(difference / length). */
  @Property
  void aLayerTurnsTheFootByItsTaper(
      @ForAll @DoubleRange(min = 40, max = 65) double angle,
      @ForAll @DoubleRange(min = 80, max = 160) double bearing,
      @ForAll @DoubleRange(min = 0, max = 20) double toe,
      @ForAll @DoubleRange(min = 0, max = 20) double heel) {
    SideProfile foot = Trade.profile(90, 30, angle, bearing);
    double turn = Math.toDegrees(Math.atan((heel - toe) / bearing));
    SideProfile after = foot.with(BuildDepth.square(foot, toe, heel));
    assertThat(after.toeAngle()).isCloseTo(angle + turn, within(1e-9));
  }

  @Test
  void aLevelLayerTellsOnTheWallByTheSineOfItsAngle() {
    SideProfile foot = Trade.profile(90, 30, 30, 100);
    AddedMaterial pad = BuildDepth.square(foot, 10, 10);
    assertThat(pad.toeDepth()).isCloseTo(20, within(1e-9));
    assertThat(pad.heelDepth()).isCloseTo(20, within(1e-9));
  }

  /** Derived: 100:25 brought to 3:1 needs 12.5 mm all round. */
  @Test
  void solvesForARatio() {
    SideProfile foot = Trade.profile(100, 25, 48, 130);
    assertThat(BuildDepth.equalForRatio(foot, 3)).isEqualTo(12.5);
    assertThat(BuildDepth.heelForRatio(foot, 3, 5)).isEqualTo(10);
    assertThat(BuildDepth.toeForRatio(foot, 3, 10)).isEqualTo(5);
    assertThat(BuildDepth.equalForRatio(Trade.profile(90, 30, 48, 130), 3)).isZero();
  }

  @Property
  void aSolvedDepthComesBackToTheRatio(
      @ForAll @DoubleRange(min = 60, max = 130) double toe,
      @ForAll @DoubleRange(min = 20, max = 50) double heel,
      @ForAll @DoubleRange(min = 1.5, max = 3) double ratio) {
    SideProfile foot = Trade.profile(toe, heel, 48, 130);
    double same = BuildDepth.equalForRatio(foot, ratio);
    double atHeel = BuildDepth.heelForRatio(foot, ratio, 4);
    double atToe = BuildDepth.toeForRatio(foot, ratio, 4);
    assertThat(ratio(foot, same, same)).isCloseTo(ratio, within(1e-9));
    assertThat(ratio(foot, 4, atHeel)).isCloseTo(ratio, within(1e-9));
    assertThat(ratio(foot, atToe, 4)).isCloseTo(ratio, within(1e-9));
  }

  @Property
  void aSolvedDepthComesBackToTheAngle(
      @ForAll @DoubleRange(min = 40, max = 60) double angle,
      @ForAll @DoubleRange(min = 42, max = 58) double wanted,
      @ForAll @DoubleRange(min = 80, max = 160) double bearing) {
    SideProfile foot = Trade.profile(90, 30, angle, bearing);
    double atHeel = BuildDepth.heelForAngle(foot, wanted, 3);
    double atToe = BuildDepth.toeForAngle(foot, wanted, 3);
    assertThat(foot.with(AddedMaterial.depth(3, atHeel)).toeAngle())
        .isCloseTo(wanted, within(1e-9));
    assertThat(foot.with(AddedMaterial.depth(atToe, 3)).toeAngle()).isCloseTo(wanted, within(1e-9));
  }

  private static double ratio(SideProfile foot, double toe, double heel) {
    return foot.with(AddedMaterial.depth(toe, heel)).toeHeelRatio();
  }
}
