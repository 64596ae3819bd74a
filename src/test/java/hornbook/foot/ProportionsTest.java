package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.Measures;
import hornbook.foot.shape.AddedMaterial;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProportionsTest {
  private static final Measures MEASURES =
      Given.a(
          Measures.class,
          Map.of(
              "toeLength", 90.0,
              "heelLength", 30.0,
              "toeAngle", 48.0,
              "heelAngle", 46.0,
              "pasternAngle", 50.0,
              "bearingLength", 130.0,
              "width", 124.0,
              "toeToWidest", 62.0));

  @Test
  void beforeIsAsMeasured() {
    assertThat(Proportions.before(MEASURES))
        .isEqualTo(new Proportions(90, 30, 3, 48, -2, 124, 130, 62, 62, 6));
  }

  /** Derived: 8 mm of depth all round, 6 mm of thickness round the wall, toe rolled 12 mm back. */
  @Test
  void afterCarriesEveryPartOfTheBuild() {
    AddedMaterial build = AddedMaterial.depth(8, 8).withFront(6).withSides(6).withSetBack(12);
    Proportions after = Proportions.after(MEASURES, build);
    double angle = Math.toRadians(48);
    double forward = 6 / Math.sin(angle);
    assertThat(after.toeLength()).isEqualTo(98);
    assertThat(after.heelLength()).isEqualTo(38);
    assertThat(after.toeHeelRatio()).isCloseTo(98.0 / 38, within(1e-9));
    assertThat(after.toeAngle()).isEqualTo(48);
    assertThat(after.hoofPasternDifference()).isEqualTo(-2);
    assertThat(after.width()).isEqualTo(136);
    assertThat(after.bearingLength()).isCloseTo(130 + forward, within(1e-9));
    assertThat(after.toeToWidest()).isCloseTo(62 + 8 * Math.cos(angle) + forward, within(1e-9));
    assertThat(after.heelSupport())
        .isCloseTo(after.bearingLength() - 2 * after.toeToWidest(), within(1e-9));
    assertThat(after.breakover()).isCloseTo(62 + 8 * Math.cos(angle) + forward - 12, within(1e-9));
  }

  @Test
  void whatWasNotMeasuredStaysUnknown() {
    Proportions after =
        Proportions.after(Trade.ground(null, 124.0, null), AddedMaterial.depth(8, 8));
    assertThat(after.width()).isEqualTo(124);
    assertThat(after.toeHeelRatio()).isNaN();
    assertThat(after.breakover()).isNaN();
  }
}
