package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.plan.sheet.Technique;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Composite across a crack. A toe crack opens as the foot is lifted and shuts under weight (rule
 * K044); nothing is laid over a crack that moves or bleeds (O'Grady 2010).
 */
class PatchedCrackTest {
  private static final String TOE =
      "{place: toe, side: lateral, starts: coronet, depth: deep, bleeds: false, moves: false}";

  @Test
  void aPatchOverAToeCrackSetsWithTheFootHeldUp() {
    assertThat(said(TOE)).contains("repair.patch", "step.set-held").doesNotContain("step.set");
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
    String foot =
        """
        visit: {date: 2026-05-02, airTemperature: 18 C}
        kit: {adhesive: acrylic}
        feet:
          - limb: left-hind
            shoeing: nailed
            measures: {toeLength: 86, heelLength: 40, toeAngle: 54, bearingLength: 130, width: 120}
            cracks: [%s]
        """
            .formatted(crack);
    return Jobs.said(Jobs.plan(Jobs.advise(foot), Technique.PROSTHETIC_WALL, Jobs.ANYWAY));
  }
}
