package hornbook.foot;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Mapped walls for properties: whole millimetres, unmapped gaps, unknown heights and the like. */
public class Walls extends DomainContextBase {
  /** The furthest that a generated map reaches, mm. */
  static final int REACH = 160;

  @Provide
  Arbitrary<List<WallStretch>> wall() {
    return side(Side.MEDIAL)
        .flatMap(
            medial ->
                side(Side.LATERAL)
                    .map(
                        lateral -> {
                          List<WallStretch> both = new ArrayList<>(medial);
                          both.addAll(lateral);
                          return both;
                        }));
  }

  private Arbitrary<List<WallStretch>> side(Side side) {
    return Arbitraries.randomValue(
        random -> {
          List<WallStretch> stretches = new ArrayList<>();
          int from = random.nextInt(3) == 0 ? random.nextInt(30) : 0;
          int count = random.nextInt(7);
          for (int i = 0; i < count && from < REACH; i++) {
            int to = Math.min(REACH, from + 1 + random.nextInt(80));
            int pick = random.nextInt(2 * WallState.values().length);
            WallState state = WallState.values()[pick < WallState.values().length ? pick : 0];
            stretches.add(
                Trade.stretch(
                    side,
                    (double) from,
                    (double) to,
                    state,
                    random.nextInt(4) == 0 ? null : 5.0 + random.nextInt(50),
                    random.nextInt(4) == 0 ? null : 4.0 + random.nextInt(8),
                    random.nextInt(4) == 0 ? null : (Boolean) random.nextBoolean()));
            from = to + (random.nextInt(5) == 0 ? random.nextInt(20) : 0);
          }
          return stretches;
        });
  }

  /** What stands on each whole millimetre of a side; null where unmapped. */
  public static WallStretch[] cells(List<WallStretch> wall, Side side, int edge) {
    WallStretch[] cells = new WallStretch[edge];
    for (WallStretch s : wall) {
      for (int mm = s.from().intValue(); s.side() == side && mm < s.to(); mm++) {
        cells[mm] = s;
      }
    }
    return cells;
  }
}
