package hornbook.foot.wall;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.CrackPlace;
import hornbook.foot.Given;
import hornbook.foot.Trade;
import hornbook.foot.number.Interval;
import hornbook.foot.shape.GroundOutline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NailSitesTest {
  /** First nail 20 mm from the toe, 25 mm apart, 10 mm from the end of a run, 6 mm of wall. */
  private static final NailingLimits LIMITS =
      new NailingLimits(25, 20, 10, 6, 1, 2.0 / 3, 0.9, Trade.REGIONS);

  private static final WallStretch LATERAL = Trade.sound(Side.LATERAL, 0, 150, 9.0);

  @Test
  void setsNailsFromTheToeBackToTheRearmostLimit() {
    NailSites sites = sites(95, null, Trade.sound(Side.MEDIAL, 0, 150, 9.0));
    assertThat(sites.medial().positions()).containsExactly(20.0, 45.0, 70.0, 95.0);
    assertThat(sites.weaker()).isEqualTo(Interval.of(4));
    assertThat(sites.both()).isEqualTo(Interval.of(8));
    assertThat(sites(94, null, Trade.sound(Side.MEDIAL, 0, 150, 9.0)).weaker())
        .isEqualTo(Interval.of(3));
  }

  @Test
  void theWeakerBranchMayBeEither() {
    WallStretch strong = Trade.sound(Side.MEDIAL, 0, 150, 9.0);
    WallStretch weak = Trade.sound(Side.LATERAL, 0, 60, 9.0);
    WallStretch torn = Trade.stretch(Side.LATERAL, 60, 150, WallState.BROKEN_AWAY);
    WallSurvey wall = Trade.whole(List.of(strong, weak, torn));
    NailSites sites = NailSites.of(wall, null, LIMITS, 95);
    assertThat(sites.weaker()).isEqualTo(sites.lateral().count()).isEqualTo(Interval.of(2));
    assertThat(sites(95, null, Trade.stretch(Side.MEDIAL, 0, 150, WallState.RESECTED)).weaker())
        .isEqualTo(Interval.of(0));
  }

  @Test
  void keepsClearOfTheEndsOfASoundRun() {
    NailSites sites =
        sites(
            95,
            null,
            Trade.stretch(Side.MEDIAL, 0, 40, WallState.SEPARATED),
            Trade.sound(Side.MEDIAL, 40, 85, 9.0),
            Trade.stretch(Side.MEDIAL, 85, 150, WallState.CRUMBLING));
    assertThat(sites.medial().positions()).containsExactly(50.0, 75.0);
    assertThat(sites.weaker()).isEqualTo(Interval.of(2));
  }

  @Test
  void aRunGoesOnAcrossTheToeWhenTheOtherSideIsSoundThere() {
    NailingLimits close = new NailingLimits(25, 0, 10, 6, 1, 2.0 / 3, 0.9, Trade.REGIONS);
    WallStretch medial = Trade.sound(Side.MEDIAL, 0, 150, 9.0);
    WallStretch torn = Trade.stretch(Side.LATERAL, 0, 150, WallState.BROKEN_AWAY);
    assertThat(first(close, medial, LATERAL)).isZero();
    assertThat(first(close, medial, torn)).isEqualTo(10);
    WallStretch late = Trade.sound(Side.LATERAL, 5, 150, 9.0);
    assertThat(first(close, medial, late)).isEqualTo(10);
    WallSurvey open = Trade.whole(List.of(medial, late));
    assertThat(NailSites.of(open, null, close, 95).medial().possiblePositions()).startsWith(0.0);
  }

  @Test
  void flaredCrackedAndRepairedWallTakesNoNail() {
    for (WallState state : List.of(WallState.FLARED, WallState.CRACKED, WallState.REPAIRED)) {
      assertThat(sites(95, null, Trade.stretch(Side.MEDIAL, 0, 150, state)).weaker())
          .isEqualTo(Interval.of(0));
    }
  }

  @Test
  void wallOfUnknownThicknessMayTakeANailButDoesNotCertainly() {
    assertThat(sites(95, null, Trade.sound(Side.MEDIAL, 0, 150, null)).weaker())
        .isEqualTo(new Interval(0, 4));
    assertThat(sites(95, null, Trade.sound(Side.MEDIAL, 0, 150, 5.9)).weaker())
        .isEqualTo(Interval.of(0));
    assertThat(sites(95, null, Trade.sound(Side.MEDIAL, 0, 150, 6.0)).weaker())
        .isEqualTo(Interval.of(4));
  }

  @Test
  void aThinStretchIsStillSoundForItsNeighbours() {
    NailSites sites =
        sites(
            95,
            null,
            Trade.sound(Side.MEDIAL, 0, 40, 9.0),
            Trade.sound(Side.MEDIAL, 40, 60, 5.0),
            Trade.sound(Side.MEDIAL, 60, 150, 9.0));
    assertThat(sites.medial().positions()).containsExactly(20.0, 60.0, 85.0);
  }

  /** The wall between two sound runs is no wall to nail, but may turn out to be. */
  @Test
  void aGapInTheMapPartsTwoRuns() {
    NailSites sites =
        sites(
            95, null, Trade.sound(Side.MEDIAL, 0, 40, 9.0), Trade.sound(Side.MEDIAL, 60, 150, 9.0));
    assertThat(sites.medial().positions()).containsExactly(20.0, 70.0, 95.0);
    assertThat(sites.medial().count()).isEqualTo(new Interval(3, 4));
  }

  @Test
  void unmappedWallMayTakeNails() {
    NailSites sites = sites(95, null, Trade.sound(Side.MEDIAL, 0, 60, 9.0));
    assertThat(sites.medial().count()).isEqualTo(new Interval(2, 4));
    assertThat(sites.medial().possiblePositions()).containsExactly(20.0, 45.0, 70.0, 95.0);
  }

  /** The side of the wall runs from 0.2 to 0.6 of the edge: 30 to 90 mm here (usda-1916). */
  @Test
  void aCrackThatIsNotMappedBarsItsWholePartOfTheWall() {
    WallStretch medial = Trade.sound(Side.MEDIAL, 0, 150, 9.0);
    NailSites sites = sites(95, List.of(crack(CrackPlace.SIDE, Side.MEDIAL)), medial);
    assertThat(sites.medial().positions()).containsExactly(20.0, 90.0);
    assertThat(sites.medial().count()).isEqualTo(new Interval(2, 4));
    assertThat(sites.lateral().count()).isEqualTo(Interval.of(4));
    assertThat(sites(95, List.of(crack(CrackPlace.SIDE, null)), medial).both())
        .isEqualTo(new Interval(4, 8));
    assertThat(sites(95, List.of(crack(null, Side.MEDIAL)), medial).weaker())
        .isEqualTo(new Interval(0, 4));
    assertThat(sites(95, List.of(crack(CrackPlace.BAR, Side.MEDIAL)), medial).weaker())
        .isEqualTo(Interval.of(4));
  }

  @Test
  void aCrackThatIsMappedBarsOnlyItsStretch() {
    NailSites sites =
        sites(
            95,
            List.of(crack(CrackPlace.SIDE, Side.MEDIAL)),
            Trade.sound(Side.MEDIAL, 0, 50, 9.0),
            Trade.stretch(Side.MEDIAL, 50, 54, WallState.CRACKED),
            Trade.sound(Side.MEDIAL, 54, 150, 9.0));
    assertThat(sites.medial().positions()).containsExactly(20.0, 64.0, 89.0);
    assertThat(sites.medial().count()).isEqualTo(Interval.of(3));
  }

  @Test
  void aCrackedStretchInAnotherPartOfTheWallPlacesNoCrack() {
    NailSites sites =
        sites(
            95,
            List.of(crack(CrackPlace.SIDE, Side.MEDIAL)),
            Trade.sound(Side.MEDIAL, 0, 120, 9.0),
            Trade.stretch(Side.MEDIAL, 120, 124, WallState.CRACKED),
            Trade.sound(Side.MEDIAL, 124, 150, 9.0));
    assertThat(sites.medial().count()).isEqualTo(new Interval(2, 4));
  }

  /** A fore foot no further back than its widest part, a hind foot two thirds. */
  @Test
  void theRearmostLimitDependsOnTheLimb() {
    GroundOutline outline = Trade.outline(120, 118, 58);
    assertThat(LIMITS.rearmost(outline, true)).isEqualTo(outline.edgeAt(58));
    assertThat(LIMITS.rearmost(outline, false)).isEqualTo(outline.edgeAt(80));
    assertThat(LIMITS.rearmostWaived(outline)).isEqualTo(outline.edgeAt(108));
    NailingLimits far = new NailingLimits(25, 20, 10, 6, 3, 2, 1.5, Trade.REGIONS);
    assertThat(far.rearmost(outline, true)).isEqualTo(outline.edgeLength());
    assertThat(far.rearmostWaived(outline)).isEqualTo(outline.edgeLength());
  }

  private static double first(NailingLimits limits, WallStretch medial, WallStretch lateral) {
    WallSurvey wall = Trade.whole(List.of(medial, lateral));
    return NailSites.of(wall, null, limits, 95).medial().positions().get(0);
  }

  private static NailSites sites(double rearmost, List<WallCrack> cracks, WallStretch... medial) {
    List<WallStretch> wall = new ArrayList<>(List.of(medial));
    wall.add(LATERAL);
    return NailSites.of(Trade.whole(wall), cracks, LIMITS, rearmost);
  }

  private static WallCrack crack(CrackPlace place, Side side) {
    Map<String, Object> known = new HashMap<>();
    known.put("place", place);
    known.put("side", side);
    return Given.a(WallCrack.class, known);
  }
}
