package hornbook.foot.wall;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.Trade;
import hornbook.foot.Walls;
import hornbook.foot.number.Interval;
import java.util.List;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/**
 * The count against trying every set of whole millimetres. With limits and maps in whole
 * millimetres the best set lies on them: nails moved toward the toe until they touch something do.
 */
@Domain(Walls.class)
@Domain(DomainContext.Global.class)
class NailSitesPropertyTest {
  private static final int LEAST = 6;

  private static final Predicate<WallStretch> SOUND =
      s -> s != null && s.state() == WallState.SOUND;
  private static final Predicate<WallStretch> MAYBE_SOUND = s -> s == null || SOUND.test(s);
  private static final Predicate<WallStretch> THICK =
      s -> SOUND.test(s) && s.thickness() != null && s.thickness() >= LEAST;
  private static final Predicate<WallStretch> MAYBE_THICK =
      s -> MAYBE_SOUND.test(s) && (s == null || s.thickness() == null || s.thickness() >= LEAST);

  @Property
  void noOtherSetOfPlacesHoldsMoreNails(
      @ForAll List<WallStretch> wall,
      @ForAll @IntRange(min = 5, max = 40) int spacing,
      @ForAll @IntRange(min = 0, max = 30) int toe,
      @ForAll @IntRange(min = 0, max = 15) int clear,
      @ForAll @IntRange(min = 0, max = 160) int rearmost) {
    WallSurvey survey = Trade.whole(wall);
    if (!(survey.edge() > 0)) {
      return;
    }
    NailingLimits limits = new NailingLimits(spacing, toe, clear, LEAST, 1, 1, 1, Trade.REGIONS);
    NailSites sites = NailSites.of(survey, null, limits, rearmost);
    int edge = (int) survey.medial().edge();
    Grid grid = new Grid(edge, spacing, toe, clear, rearmost);
    WallStretch[] medial = Walls.cells(wall, Side.MEDIAL, edge);
    WallStretch[] lateral = Walls.cells(wall, Side.LATERAL, edge);
    assertThat(sites.medial().count())
        .isEqualTo(
            new Interval(
                grid.most(medial, lateral, SOUND, THICK),
                grid.most(medial, lateral, MAYBE_SOUND, MAYBE_THICK)));
    assertThat(sites.lateral().count())
        .isEqualTo(
            new Interval(
                grid.most(lateral, medial, SOUND, THICK),
                grid.most(lateral, medial, MAYBE_SOUND, MAYBE_THICK)));
    assertSpaced(sites.medial().positions(), spacing, toe, rearmost);
  }

  private static void assertSpaced(List<Double> places, int spacing, int toe, int rearmost) {
    double last = Double.NEGATIVE_INFINITY;
    for (double place : places) {
      assertThat(place).isBetween((double) toe, (double) rearmost);
      assertThat(place - last).isGreaterThanOrEqualTo(spacing);
      last = place;
    }
  }

  private record Grid(int edge, int spacing, int toe, int clear, int rearmost) {

    int most(
        WallStretch[] side,
        WallStretch[] across,
        Predicate<WallStretch> sound,
        Predicate<WallStretch> thick) {
      int[] best = new int[edge + spacing + 2];
      for (int mm = edge; mm >= 0; mm--) {
        boolean may = mm >= toe && mm <= rearmost && allowed(mm, side, across, sound, thick);
        best[mm] = Math.max(best[mm + 1], may ? 1 + best[mm + spacing] : 0);
      }
      return best[0];
    }

    private boolean allowed(
        int at,
        WallStretch[] side,
        WallStretch[] across,
        Predicate<WallStretch> sound,
        Predicate<WallStretch> thick) {
      boolean takes = at > 0 && thick.test(side[at - 1]) || at < edge && thick.test(side[at]);
      boolean inside = at == 0 || at == edge || sound.test(side[at - 1]) || sound.test(side[at]);
      for (int mm = at - clear; mm < at + clear; mm++) {
        boolean here = mm < 0 ? sound.test(across[0]) : mm < edge && sound.test(side[mm]);
        inside &= here;
      }
      return takes && inside;
    }
  }
}
