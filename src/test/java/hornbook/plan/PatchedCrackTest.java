package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.plan.sheet.Technique;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Composite across a crack. A toe crack opens as the foot is lifted and shuts under weight (rule
 * K044); nothing is laid over a crack that moves or bleeds (O'Grady 2010).
 */
class PatchedCrackTest {
  private static final int WARM = 22;
  private static final String TOE =
      "{place: toe, side: lateral, starts: coronet, depth: deep, bleeds: false, moves: false}";

  @Test
  void aPatchOverAToeCrackSetsWithTheFootHeldUp() {
    assertThat(said(TOE)).contains("repair.patch", "step.set-held").doesNotContain("step.set");
  }

  /** A strip of 20 mm on each side, 5 mm thick: 2 cm3 a centimetre, and a fifth on top. */
  @Test
  void aPatchTakesSoMuchForEachCentimetreOfTheCrack() {
    assertThat(Jobs.number(plan(TOE, WARM), "repair.patch-amount", "volume").value())
        .isCloseTo(2.4, within(1e-9));
  }

  /** Outside the measured range no minutes are given, and the foot is held up all the same. */
  @Test
  void inTheColdTheFootIsHeldUpForAsLongAsItTakes() {
    assertThat(Jobs.said(plan(TOE, 12))).contains("clock.held").doesNotContain("step.set-held");
    assertThat(Jobs.said(plan(TOE.replace("toe", "quarter"), 12))).doesNotContain("clock.held");
  }

  @Test
  void anyOtherPatchSetsOnTheGround() {
    assertThat(said(TOE.replace("toe", "quarter")))
        .contains("repair.patch", "step.set")
        .doesNotContain("step.set-held");
  }

  @Test
  void noPatchIsLaidOverACrackThatMovesBleedsOrWasNotTried() {
    for (String crack :
        Set.of(
            TOE.replace("moves: false", "moves: true"),
            TOE.replace("bleeds: false", "bleeds: true"),
            TOE.replace(", moves: false", ""))) {
      assertThat(said(crack)).as(crack).contains("repair.nothing").doesNotContain("repair.patch");
    }
  }

  private static Set<String> said(String crack) {
    return Jobs.said(plan(crack, WARM));
  }

  private static Plan plan(String crack, int air) {
    String foot =
        """
        visit: {date: 2026-05-02, airTemperature: %d C}
        kit: {adhesive: acrylic}
        feet:
          - limb: left-hind
            shoeing: nailed
            measures: {toeLength: 86, heelLength: 40, toeAngle: 54, bearingLength: 130, width: 120}
            cracks: [%s]
        """
            .formatted(air, crack);
    return Jobs.plan(Jobs.advise(foot), Technique.PROSTHETIC_WALL, Jobs.ANYWAY);
  }
}
