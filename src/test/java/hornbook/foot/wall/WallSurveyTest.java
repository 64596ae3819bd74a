package hornbook.foot.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.Trade;
import hornbook.foot.number.Interval;
import hornbook.foot.shape.GroundOutline;
import java.util.List;
import org.junit.jupiter.api.Test;

class WallSurveyTest {
  private static final GroundOutline OUTLINE = Trade.outline(130, 124, 62);

  @Test
  void addsUpTheSharesOfAWhollyMappedWall() {
    WallSurvey wall =
        WallSurvey.of(
            List.of(
                at(Side.MEDIAL, 0, 40, WallState.SEPARATED),
                at(Side.MEDIAL, 40, 100, WallState.SOUND),
                at(Side.LATERAL, 0, 20, WallState.BROKEN_AWAY),
                at(Side.LATERAL, 20, 30, WallState.FLARED),
                at(Side.LATERAL, 30, 100, WallState.SOUND)),
            100,
            0);
    assertThat(wall.edgeUnknown()).isFalse();
    assertThat(wall.edge()).isEqualTo(200);
    assertThat(wall.share(WallGroup.SOUND)).isEqualTo(Interval.of(65));
    assertThat(wall.medial().share(WallGroup.SOUND)).isEqualTo(Interval.of(60));
    assertThat(wall.lateral().share(WallState.FLARED)).isEqualTo(Interval.of(10));
    assertThat(wall.share(WallGroup.MISSING)).isEqualTo(Interval.of(10));
    assertThat(wall.share(WallState.SEPARATED)).isEqualTo(Interval.of(20));
    assertThat(wall.defectShare()).isEqualTo(Interval.of(30));
    assertThat(wall.bearingShare()).isEqualTo(Interval.of(70));
    assertThat(wall.medial().longestDefect()).isEqualTo(Interval.of(40));
    assertThat(wall.defectAcrossToe()).isEqualTo(Interval.of(60));
    assertThat(wall.longestDefect()).isEqualTo(Interval.of(60));
  }

  @Test
  void whatIsUnmappedMayBeAnything() {
    WallSurvey wall =
        WallSurvey.of(
            List.of(
                at(Side.MEDIAL, 0, 80, WallState.SOUND),
                at(Side.LATERAL, 0, 30, WallState.CRUMBLING)),
            OUTLINE,
            0);
    double edge = OUTLINE.edgeLength();
    assertThat(wall.edgeUnknown()).isFalse();
    assertThat(wall.medial().share(WallGroup.SOUND).low()).isCloseTo(8000 / edge, within(1e-9));
    assertThat(wall.medial().share(WallGroup.SOUND).high()).isCloseTo(100, within(1e-9));
    assertThat(wall.lateral().share(WallGroup.SOUND).low()).isZero();
    assertThat(wall.lateral().longestDefect().low()).isEqualTo(30);
    assertThat(wall.lateral().longestDefect().high()).isCloseTo(edge, within(1e-9));
    assertThat(wall.tallestDefect()).isEqualTo(new Interval(0, Double.POSITIVE_INFINITY));
    assertThat(wall.moistDefect()).isNull();
  }

  @Test
  void aMapThatNearlyReachesTheHeelIsTakenToReachIt() {
    List<WallStretch> toShortOfTheHeel =
        List.of(at(Side.MEDIAL, 0, 150, WallState.SOUND), at(Side.LATERAL, 0, 90, WallState.SOUND));
    WallSurvey wall = WallSurvey.of(toShortOfTheHeel, OUTLINE, 0.12);
    assertThat(wall.medial().share(WallGroup.SOUND)).isEqualTo(Interval.of(100));
    assertThat(wall.lateral().share(WallGroup.SOUND).exact()).isFalse();
    WallSurvey strict = WallSurvey.of(toShortOfTheHeel, OUTLINE, 0);
    assertThat(strict.medial().share(WallGroup.SOUND).low()).isLessThan(95);
  }

  @Test
  void aMapBeyondTheOutlineGivesTheEdge() {
    WallSurvey wall = WallSurvey.of(List.of(at(Side.MEDIAL, 0, 190, WallState.SOUND)), OUTLINE, 0);
    assertThat(wall.medial().edge()).isEqualTo(190);
    assertThat(wall.lateral().edge()).isEqualTo(OUTLINE.edgeLength());
  }

  /** Two short rows without width or length of the foot may be a tenth of its edge. */
  @Test
  void withoutAnOutlineNobodyKnowsHowMuchOfTheEdgeTheRowsAre() {
    WallSurvey wall =
        WallSurvey.of(
            List.of(
                defect(Side.MEDIAL, 0, 30, 12.0, false), defect(Side.LATERAL, 0, 30, 12.0, false)),
            null,
            0.12);
    assertThat(wall.edgeUnknown()).isTrue();
    assertThat(wall.defectShare()).isEqualTo(Interval.UNKNOWN);
    assertThat(wall.tallDefectShare(10)).isEqualTo(Interval.UNKNOWN);
    assertThat(wall.defectBehind(0.6)).isEqualTo(Interval.UNKNOWN);
    assertThat(wall.longestDefect()).isEqualTo(new Interval(60, Double.POSITIVE_INFINITY));
    assertThat(wall.tallestDefect()).isEqualTo(new Interval(12, Double.POSITIVE_INFINITY));
    assertThat(wall.moistDefect()).isNull();
  }

  @Test
  void aPartOfASideMappedLeavesTheRestUnknown() {
    WallSurvey wall =
        WallSurvey.of(
            List.of(
                defect(Side.MEDIAL, 0, 30, 12.0, false), defect(Side.LATERAL, 0, 30, 12.0, false)),
            150,
            0.12);
    assertThat(wall.defectShare()).isEqualTo(new Interval(20, 100));
    assertThat(wall.defectBehind(0.6)).isEqualTo(new Interval(0, 60));
  }

  @Test
  void anUnmappedWallTellsNothing() {
    assertThat(WallSurvey.of(null, OUTLINE, 0)).isNull();
    WallSurvey empty = WallSurvey.of(List.of(), null, 0);
    Interval anything = new Interval(0, Double.POSITIVE_INFINITY);
    assertThat(empty.share(WallGroup.SOUND)).isEqualTo(Interval.UNKNOWN);
    assertThat(empty.tallestDefect()).isEqualTo(anything);
    assertThat(empty.longestDefect()).isEqualTo(anything);
    assertThat(empty.thinnestSound(90)).isEqualTo(Interval.UNKNOWN);
    assertThat(WallSurvey.of(List.of(), OUTLINE, 0).share(WallGroup.SOUND))
        .isEqualTo(new Interval(0, 100));
  }

  /** A heel gone on one side, a flare on the other: place and state tell, not the sum. */
  @Test
  void countsWhereTheWallIsLost() {
    WallSurvey wall =
        WallSurvey.of(
            List.of(
                at(Side.MEDIAL, 0, 70, WallState.SOUND),
                defect(Side.MEDIAL, 70, 100, 6.0, false),
                defect(Side.LATERAL, 0, 20, 22.0, false),
                at(Side.LATERAL, 20, 100, WallState.FLARED)),
            100,
            0);
    assertThat(wall.defectBehind(0.6)).isEqualTo(Interval.of(30));
    assertThat(wall.tallDefectShare(10)).isEqualTo(Interval.of(10));
    assertThat(wall.strongShare()).isEqualTo(Interval.of(75));
    assertThat(wall.lateral().strongShare(0.2)).isEqualTo(Interval.of(100));
    assertThat(wall.medial().strongShare(0.2)).isEqualTo(Interval.of(62.5));
  }

  /** What was not mapped may be strong or not; a height reached exactly is not passed. */
  @Test
  void countsWhatIsLeftOpenBehindTheToe() {
    WallSurvey wall =
        WallSurvey.of(
            List.of(
                at(Side.MEDIAL, 0, 60, WallState.SOUND),
                defect(Side.MEDIAL, 60, 80, 10.0, false),
                at(Side.LATERAL, 0, 100, WallState.FLARED)),
            100,
            0);
    assertThat(wall.medial().strongShare(0.2)).isEqualTo(new Interval(50, 75));
    assertThat(wall.defectBehind(0.6)).isEqualTo(new Interval(20, 40));
    assertThat(wall.tallDefectShare(10)).isEqualTo(new Interval(0, 10));
    assertThat(wall.tallDefectShare(9)).isEqualTo(new Interval(10, 20));
    assertThat(wall.share(WallState.FLARED)).isEqualTo(new Interval(50, 60));
  }

  @Test
  void defectsThatTouchAreOneRun() {
    WallSurvey wall =
        WallSurvey.of(
            List.of(
                at(Side.MEDIAL, 0, 20, WallState.SOUND),
                at(Side.MEDIAL, 20, 40, WallState.SEPARATED),
                at(Side.MEDIAL, 40, 70, WallState.BROKEN_AWAY),
                at(Side.MEDIAL, 70, 100, WallState.SOUND),
                at(Side.LATERAL, 0, 100, WallState.SOUND)),
            100,
            0);
    assertThat(wall.medial().longestDefect()).isEqualTo(Interval.of(50));
  }

  /** A gap in the map is a gap, however much is mapped behind it. */
  @Test
  void aGapLeavesTheThinnestWallOpen() {
    WallSurvey wall =
        survey(
            Trade.sound(Side.MEDIAL, 0, 40, 8.0),
            Trade.sound(Side.MEDIAL, 60, 100, 9.0),
            Trade.sound(Side.LATERAL, 0, 100, 7.0));
    assertThat(wall.thinnestSound(90)).isEqualTo(new Interval(0, 7));
  }

  @Test
  void theTallestDefectIsBoundedOnlyWhenEveryHeightIsKnown() {
    WallStretch tall = defect(Side.MEDIAL, 0, 40, 38.0, false);
    WallStretch noHeight = defect(Side.LATERAL, 0, 100, null, null);
    WallStretch low = defect(Side.LATERAL, 0, 100, 12.0, false);
    WallStretch rest = at(Side.MEDIAL, 40, 100, WallState.SOUND);
    assertThat(survey(tall, rest, low).tallestDefect()).isEqualTo(Interval.of(38));
    assertThat(survey(tall, rest, noHeight).tallestDefect())
        .isEqualTo(new Interval(38, Double.POSITIVE_INFINITY));
    WallStretch sound = at(Side.LATERAL, 0, 100, WallState.SOUND);
    assertThat(survey(at(Side.MEDIAL, 0, 100, WallState.FLARED), sound).tallestDefect())
        .isEqualTo(Interval.of(0));
  }

  @Test
  void aDefectIsDryOnlyWhenAllOfItWasFoundDry() {
    WallStretch dry = defect(Side.MEDIAL, 0, 100, 38.0, false);
    WallStretch wet = defect(Side.LATERAL, 0, 100, 12.0, true);
    WallStretch untold = defect(Side.LATERAL, 0, 100, 12.0, null);
    assertThat(survey(dry, wet).moistDefect()).isTrue();
    assertThat(survey(dry, untold).moistDefect()).isNull();
    assertThat(survey(dry, at(Side.LATERAL, 0, 100, WallState.SOUND)).moistDefect()).isFalse();
    assertThat(survey(dry, at(Side.LATERAL, 0, 60, WallState.SOUND)).moistDefect()).isNull();
  }

  @Test
  void theThinnestSoundWallIsSoughtOnlyWhereNailsGo() {
    WallStretch front = Trade.sound(Side.MEDIAL, 0, 80, 9.0);
    WallStretch behind = Trade.sound(Side.MEDIAL, 80, 100, 5.0);
    WallStretch other = Trade.sound(Side.LATERAL, 0, 100, 8.0);
    WallSurvey wall = survey(front, behind, other);
    assertThat(wall.thinnestSound(80)).isEqualTo(Interval.of(8));
    assertThat(wall.thinnestSound(81)).isEqualTo(Interval.of(5));
    assertThat(wall.thinnestSound(Double.NaN)).isEqualTo(new Interval(5, Double.POSITIVE_INFINITY));
    assertThat(survey(front, behind, Trade.sound(Side.LATERAL, 0, 100, null)).thinnestSound(80))
        .isEqualTo(new Interval(0, 9));
    assertThat(survey(front, other).thinnestSound(80)).isEqualTo(Interval.of(8));
    assertThat(survey(front, other).thinnestSound(90)).isEqualTo(new Interval(0, 8));
    WallStretch noSound = at(Side.LATERAL, 0, 100, WallState.SEPARATED);
    assertThat(survey(noSound).thinnestSound(80)).isEqualTo(Interval.UNKNOWN);
  }

  private static WallSurvey survey(WallStretch... wall) {
    return Trade.whole(List.of(wall));
  }

  private static WallStretch at(Side side, double from, double to, WallState state) {
    return Trade.stretch(side, from, to, state);
  }

  private static WallStretch defect(
      Side side, double from, double to, Double height, Boolean moist) {
    return Trade.stretch(side, from, to, WallState.CRUMBLING, height, null, moist);
  }
}
