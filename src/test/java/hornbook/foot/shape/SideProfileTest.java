package hornbook.foot.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.foot.Trade;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.algorithm.Intersection;
import org.locationtech.jts.geom.Coordinate;

class SideProfileTest {

  /** Derived: (T + d) : (H + d), the trade's sum for equal depth. */
  @ParameterizedTest
  @CsvSource({"90, 30, 10, 2.5", "90, 30, 5, 2.714", "100, 25, 10, 3.143"})
  void equalDepthEvensTheRatioAndLeavesTheAngle(double toe, double heel, double d, double ratio) {
    SideProfile before = new SideProfile(toe, heel, 46, 38, 50, 130, 62, 0);
    SideProfile after = before.with(AddedMaterial.depth(d, d));
    assertThat(after.toeHeelRatio()).isCloseTo(ratio, within(0.0005));
    assertThat(after.toeAngle()).isEqualTo(46);
    assertThat(after.heelAngle()).isEqualTo(38);
    assertThat(after.bearingLength()).isEqualTo(130);
  }

  /** Turner (1992) reads 52 over 46 as under-run, 52 over 48 not; the limit stands in the rules. */
  @Test
  void differencesAreToeLessTheOther() {
    SideProfile foot = new SideProfile(90, 30, 52, 46, 50, 130, 62, 0);
    assertThat(foot.toeHeelAngleDifference()).isEqualTo(6);
    assertThat(foot.hoofPasternDifference()).isEqualTo(2);
    assertThat(foot.shareAheadOfMiddle()).isCloseTo(47.692, within(0.001));
    assertThat(foot.heelSupport()).isEqualTo(6);
    assertThat(foot.breakover()).isEqualTo(62);
  }

  @Test
  void whatIsUnknownStaysUnknownAndTheRestIsStillWorkedOut() {
    SideProfile foot =
        new SideProfile(90, 30, Double.NaN, Double.NaN, 50, Double.NaN, Double.NaN, 0);
    SideProfile after = foot.with(AddedMaterial.depth(10, 10));
    assertThat(after.toeHeelRatio()).isEqualTo(2.5);
    assertThat(after.toeAngle()).isNaN();
    assertThat(after.breakover()).isNaN();
    assertThat(foot.with(AddedMaterial.depth(0, 5)).heelLength()).isEqualTo(35);
  }

  @Test
  void frontThicknessCarriesTheToeForwardAndARollBringsBreakoverBack() {
    SideProfile foot = Trade.profile(90, 30, 50, 130);
    SideProfile after = foot.with(AddedMaterial.NOTHING.withFront(6).withBehind(4).withSetBack(12));
    double forward = 6 / Math.sin(Math.toRadians(50));
    assertThat(after.bearingLength()).isCloseTo(130 + forward + 4, within(1e-9));
    assertThat(after.breakover()).isCloseTo(65 + forward - 12, within(1e-9));
    assertThat(after.toeLength()).isEqualTo(90);
    assertThat(after.toeAngle()).isEqualTo(50);
  }

  @Test
  void takingOffWhatWasAddedBringsTheFootBack() {
    SideProfile foot = Trade.profile(90, 30, 50, 130);
    SideProfile back = foot.with(AddedMaterial.depth(4, 11)).with(AddedMaterial.depth(-4, -11));
    assertThat(back.toeAngle()).isCloseTo(50, within(1e-9));
    assertThat(back.bearingLength()).isCloseTo(130, within(1e-9));
    SideProfile level = foot.with(AddedMaterial.depth(8, 8)).with(AddedMaterial.depth(-8, -8));
    assertThat(level.toeToWidest()).isCloseTo(65, within(1e-9));
  }

  @Test
  void theHeelTurnsWithTheToeAndRollsAddUp() {
    SideProfile foot = new SideProfile(90, 30, 46, 38, 50, 130, 62, 5);
    SideProfile after = foot.with(AddedMaterial.depth(0, 8).withSetBack(7));
    double turn = foot.tilt(0, 8);
    assertThat(turn).isPositive();
    assertThat(after.heelAngle()).isEqualTo(38 + turn);
    assertThat(after.setBack()).isEqualTo(12);
    assertThat(after.toeHeelAngleDifference()).isCloseTo(8, within(1e-9));
  }

  /** The whole figure drawn out in coordinates and measured with a geometry library. */
  @Property
  void agreesWithTheFigureDrawnOut(
      @ForAll @DoubleRange(min = 40, max = 65) double angle,
      @ForAll @DoubleRange(min = 80, max = 160) double bearing,
      @ForAll @DoubleRange(min = 0, max = 20) double toeDepth,
      @ForAll @DoubleRange(min = 0, max = 20) double heelDepth) {
    SideProfile foot = Trade.profile(90, 30, angle, bearing);
    SideProfile after = foot.with(AddedMaterial.depth(toeDepth, heelDepth));
    double a = Math.toRadians(angle);
    Coordinate hairline = new Coordinate(90 * Math.cos(a), 90 * Math.sin(a));
    Coordinate heelHairline = new Coordinate(bearing + 30 * Math.cos(a), 30 * Math.sin(a));
    Coordinate toe = new Coordinate(-toeDepth * Math.cos(a), -toeDepth * Math.sin(a));
    Coordinate heel = new Coordinate(bearing - heelDepth * Math.cos(a), -heelDepth * Math.sin(a));
    assertThat(after.toeLength()).isCloseTo(toe.distance(hairline), within(1e-9));
    assertThat(after.heelLength()).isCloseTo(heel.distance(heelHairline), within(1e-9));
    assertThat(after.bearingLength()).isCloseTo(toe.distance(heel), within(1e-9));
    double atToe = Math.toDegrees(Angle.angleBetween(heel, toe, hairline));
    assertThat(after.toeAngle()).isCloseTo(atToe, within(1e-9));
    Coordinate foremost = foot(new Coordinate(bearing / 2, 0), toe, heel);
    assertThat(after.breakover()).isCloseTo(toe.distance(foremost), within(1e-9));
  }

  /** Where a line square to the new ground meets it. */
  private static Coordinate foot(Coordinate from, Coordinate toe, Coordinate heel) {
    Coordinate square = new Coordinate(from.x + (toe.y - heel.y), from.y + (heel.x - toe.x));
    return Intersection.intersection(from, square, toe, heel);
  }
}
