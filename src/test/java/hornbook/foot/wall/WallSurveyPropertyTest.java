package hornbook.foot.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.Trade;
import hornbook.foot.Walls;
import hornbook.foot.number.Interval;
import hornbook.foot.shape.GroundOutline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** The survey against counting whole millimetres one by one. */
@Domain(Walls.class)
@Domain(DomainContext.Global.class)
class WallSurveyPropertyTest {
  private static final Predicate<WallStretch> DEFECT =
      s -> s != null && WallGroup.of(s.state()).defect();
  private static final Predicate<WallStretch> DEFECT_OR_UNMAPPED = s -> s == null || DEFECT.test(s);

  /** An outline whose edge is longer than any generated map. */
  private static final GroundOutline OUTLINE = Trade.outline(160, 150, 80);

  @Property
  void lengthsAndRunsAreThoseOfTheMillimetres(@ForAll List<WallStretch> wall) {
    WallSurvey survey = Trade.whole(wall);
    int edge = Double.isNaN(survey.edge()) ? 0 : (int) (survey.edge() / 2);
    for (SideSurvey side : List.of(survey.medial(), survey.lateral())) {
      WallStretch[] cells = Walls.cells(wall, side.side(), edge);
      for (WallState state : WallState.values()) {
        assertThat(side.length(state))
            .isEqualTo(count(cells, s -> s != null && s.state() == state));
      }
      if (edge > 0) {
        assertThat(side.unmapped()).isEqualTo(count(cells, s -> s == null));
        assertThat(side.longestDefect())
            .isEqualTo(
                Interval.between(longest(cells, DEFECT), longest(cells, DEFECT_OR_UNMAPPED)));
      }
    }
    if (edge > 0) {
      WallStretch[] round = roundTheToe(wall, edge);
      assertThat(survey.longestDefect())
          .isEqualTo(Interval.between(longest(round, DEFECT), longest(round, DEFECT_OR_UNMAPPED)));
    }
  }

  @Property
  void theGroupsShareOutTheWholeEdge(@ForAll List<WallStretch> wall) {
    WallSurvey survey = WallSurvey.of(wall, OUTLINE, 0);
    double certain = 0;
    for (WallGroup group : WallGroup.values()) {
      Interval share = survey.share(group);
      certain += share.low();
      assertThat(share.high() - share.low())
          .isCloseTo(100 * survey.unmapped() / survey.edge(), within(1e-9));
    }
    assertThat(certain + 100 * survey.unmapped() / survey.edge()).isCloseTo(100, within(1e-9));
    Interval bearing = survey.bearingShare();
    assertThat(bearing.low() + survey.defectShare().high()).isCloseTo(100, within(1e-9));
    assertThat(bearing.high() + survey.defectShare().low()).isCloseTo(100, within(1e-9));
  }

  /** Whatever an unmapped stretch turns out to be, the readings were right to allow for it. */
  @Property
  void forgettingAStretchOnlyWidensWhatIsKnown(@ForAll List<WallStretch> wall, @ForAll int pick) {
    if (wall.isEmpty()) {
      return;
    }
    List<WallStretch> fewer = new ArrayList<>(wall);
    fewer.remove(Math.floorMod(pick, wall.size()));
    WallSurvey all = WallSurvey.of(wall, OUTLINE, 0);
    WallSurvey some = WallSurvey.of(fewer, OUTLINE, 0);
    for (WallGroup group : WallGroup.values()) {
      assertWider(some.share(group), all.share(group));
    }
    assertWider(some.bearingShare(), all.bearingShare());
    assertWider(some.longestDefect(), all.longestDefect());
    assertWider(some.tallestDefect(), all.tallestDefect());
    assertThat(some.moistDefect()).isIn(null, all.moistDefect());
    if (some.thinnestSound(100).known()) {
      assertWider(some.thinnestSound(100), all.thinnestSound(100));
    }
  }

  private static void assertWider(Interval wide, Interval narrow) {
    assertThat(wide.low()).isLessThanOrEqualTo(narrow.low() + 1e-9);
    assertThat(wide.high()).isGreaterThanOrEqualTo(narrow.high() - 1e-9);
  }

  private static WallStretch[] roundTheToe(List<WallStretch> wall, int edge) {
    WallStretch[] round = new WallStretch[2 * edge];
    WallStretch[] medial = Walls.cells(wall, Side.MEDIAL, edge);
    for (int mm = 0; mm < edge; mm++) {
      round[edge - 1 - mm] = medial[mm];
    }
    System.arraycopy(Walls.cells(wall, Side.LATERAL, edge), 0, round, edge, edge);
    return round;
  }

  private static double count(WallStretch[] cells, Predicate<WallStretch> wanted) {
    return Arrays.stream(cells).filter(wanted).count();
  }

  private static double longest(WallStretch[] cells, Predicate<WallStretch> wanted) {
    int longest = 0;
    int run = 0;
    for (WallStretch cell : cells) {
      run = wanted.test(cell) ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  }
}
