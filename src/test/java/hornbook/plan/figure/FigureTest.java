package hornbook.plan.figure;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {
  private static final Figure TOE = Figure.measured("toe", 90.0, "mm", "toeLength");
  private static final Figure NOBODY = Figure.measured("heel", null, "mm", "heelLength");

  private static Figure limit(String source, Basis basis) {
    return Figure.of(
        new Limit(
            "a.limit",
            "a limit",
            3,
            "mm",
            Limit.Direction.AT_LEAST,
            true,
            null,
            null,
            source,
            "p. 1",
            basis,
            Limit.Safer.UP,
            1,
            List.of(),
            true));
  }

  @Test
  void isUnknownAsSoonAsOnePartWasNotMeasuredAndAsksForIt() {
    Figure sum =
        Figure.reckoned(
            "sum", 4, "mm", "{toe} + {heel}", FormulaParts.of("toe", TOE).and("heel", NOBODY));
    assertThat(sum.known()).isFalse();
    assertThat(sum.missing()).containsExactly("heelLength");
  }

  @Test
  void standsNoBetterThanItsWeakestLimitAndNeverAsPublished() {
    Figure published =
        Figure.reckoned(
            "x", 1, "mm", "{a}", FormulaParts.of("a", limit("usda-1916", Basis.PUBLISHED)));
    assertThat(published.basis()).isEqualTo(Basis.DERIVED);
    Figure remembered =
        Figure.reckoned(
            "y",
            1,
            "mm",
            "{x} {b}",
            FormulaParts.of("x", published).and("b", limit("memory", Basis.MEMORY)));
    assertThat(remembered.basis()).isEqualTo(Basis.MEMORY);
    assertThat(remembered.sources()).containsExactly("usda-1916", "memory");
    assertThat(remembered.origins())
        .containsExactly(
            limit("usda-1916", Basis.PUBLISHED),
            published,
            limit("memory", Basis.MEMORY),
            remembered);
  }

  @Test
  void leavesAMeasureWithoutGroundOfTheTrade() {
    assertThat(TOE.basis()).isNull();
    assertThat(TOE.origins()).containsExactly(TOE);
  }
}
