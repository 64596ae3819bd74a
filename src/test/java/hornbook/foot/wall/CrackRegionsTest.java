package hornbook.foot.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.word.CrackPlace;
import org.junit.jupiter.api.Test;

class CrackRegionsTest {
  private static final CrackRegions REGIONS = new CrackRegions(0.2, 0.6, 0.85);

  /**
   * usda-1916: five equal arcs round the edge, one of toe, two of side, two of quarter. Half the
   * toe is half an arc of each side's two and a half.
   */
  @Test
  void theEdgeFallsIntoFiveEqualArcs() {
    double arc = 2 / 5.0;
    assertThat(REGIONS.to(CrackPlace.TOE) - REGIONS.from(CrackPlace.TOE))
        .isCloseTo(arc / 2, within(1e-12));
    assertThat(REGIONS.from(CrackPlace.SIDE)).isEqualTo(REGIONS.to(CrackPlace.TOE));
    assertThat(REGIONS.to(CrackPlace.SIDE)).isCloseTo(arc / 2 + arc, within(1e-12));
    assertThat(REGIONS.from(CrackPlace.QUARTER)).isEqualTo(REGIONS.to(CrackPlace.SIDE));
    assertThat(REGIONS.to(CrackPlace.QUARTER)).isEqualTo(1);
  }

  @Test
  void theHeelIsTheEndOfTheQuarter() {
    assertThat(REGIONS.from(CrackPlace.HEEL)).isEqualTo(0.85);
    assertThat(REGIONS.to(CrackPlace.HEEL)).isEqualTo(1);
  }

  @Test
  void anUnknownPartMayBeAnywhereAndTheBarIsNowhereOnTheEdge() {
    assertThat(REGIONS.from(null)).isZero();
    assertThat(REGIONS.to(null)).isEqualTo(1);
    assertThat(REGIONS.from(CrackPlace.BAR)).isNaN();
    assertThat(REGIONS.to(CrackPlace.BAR)).isNaN();
  }

  @Test
  void partsOutOfOrderAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new CrackRegions(0.6, 0.2, 0.85));
    assertThatIllegalArgumentException().isThrownBy(() -> new CrackRegions(0.2, 0.6, 0.5));
    assertThatIllegalArgumentException().isThrownBy(() -> new CrackRegions(0.2, 0.6, 1.1));
  }
}
