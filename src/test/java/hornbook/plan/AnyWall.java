package hornbook.plan;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Walls of any states laid round one foot, as they are written in an assessment. */
final class AnyWall {
  private AnyWall() {}

  /** The list of stretches of both sides. */
  static Arbitrary<String> written() {
    return Combinators.combine(side(Side.MEDIAL), side(Side.LATERAL))
        .as((inner, outer) -> "[" + inner + ", " + outer + "]");
  }

  private static Arbitrary<String> side(Side side) {
    return stretch()
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .map(
            all -> {
              StringBuilder written = new StringBuilder();
              int from = 0;
              for (int[] one : all) {
                int to = Math.min(175, from + one[0]);
                if (to > from) {
                  written
                      .append(written.length() == 0 ? "" : ", ")
                      .append(row(side, from, to, one));
                }
                from = to;
              }
              return written.toString();
            });
  }

  /** Length, state, thickness or 0 for none, height or 0 for none. */
  private static Arbitrary<int[]> stretch() {
    return Combinators.combine(
            Arbitraries.integers().between(10, 120),
            Arbitraries.frequency(
                Tuple.of(5, WallState.SOUND.ordinal()),
                Tuple.of(1, WallState.FLARED.ordinal()),
                Tuple.of(1, WallState.CRACKED.ordinal()),
                Tuple.of(1, WallState.SEPARATED.ordinal()),
                Tuple.of(1, WallState.CRUMBLING.ordinal()),
                Tuple.of(2, WallState.BROKEN_AWAY.ordinal()),
                Tuple.of(1, WallState.RESECTED.ordinal())),
            Arbitraries.integers().between(3, 13),
            Arbitraries.integers().between(0, 60))
        .as((length, state, thickness, height) -> new int[] {length, state, thickness, height});
  }

  private static String row(Side side, int from, int to, int[] one) {
    String state = WallState.values()[one[1]].name().toLowerCase(Locale.ROOT).replace('_', '-');
    String thickness = one[2] == 3 ? "" : ", thickness: " + one[2];
    String height = one[3] == 0 ? "" : ", height: " + one[3];
    return "{side: %s, from: %d, to: %d, state: %s%s%s}"
        .formatted(side.name().toLowerCase(Locale.ROOT), from, to, state, thickness, height);
  }
}
