package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.Measures;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FootPairTest {
  private static final double GAP = 1.5;

  /** wiggers-2015: pairs 1.4 deg apart are even, 1.6 deg apart uneven. */
  @Test
  void anUnevenPairDiffersByTheGapOrMore() {
    assertThat(pair(50.0, 51.4).angleGap()).isLessThan(GAP);
    assertThat(pair(50.0, 51.6).angleGap()).isGreaterThan(GAP);
    assertThat(pair(51.5, 50.0).angleGap()).isGreaterThanOrEqualTo(GAP);
    assertThat(pair(51.5, null).angleGap()).isNaN();
  }

  @Test
  void theDifferenceIsWhatThisFootHasMoreOf() {
    FootPair pair = pair(54.0, 50.0);
    assertThat(pair.angle()).isEqualTo(4);
    assertThat(pair(50.0, 54.0).angleGap()).isEqualTo(4);
    assertThat(pair.width()).isCloseTo(-8, within(1e-9));
    assertThat(pair.lameness()).isEqualTo(3);
    assertThat(pair.lameDays()).isEqualTo(12);
  }

  @Test
  void withoutTheOtherFootNothingIsKnown() {
    FootPair pair = FootPair.of(foot(Limb.LEFT_FORE, 50.0, 118.0), null);
    assertThat(pair.angleGap()).isNaN();
    assertThat(pair.lameness()).isNaN();
    assertThat(pair.toeLength()).isNaN();
  }

  private static FootPair pair(Double here, Double there) {
    return FootPair.of(foot(Limb.LEFT_FORE, here, 118.0), foot(Limb.RIGHT_FORE, there, 126.0));
  }

  private static Foot foot(Limb limb, Double toeAngle, Double width) {
    Map<String, Object> known = new HashMap<>();
    known.put("toeAngle", toeAngle);
    known.put("width", width);
    Measures measures = Given.a(Measures.class, known);
    return Given.a(
        Foot.class, Map.of("limb", limb, "lameness", 3, "lameForDays", 12, "measures", measures));
  }
}
