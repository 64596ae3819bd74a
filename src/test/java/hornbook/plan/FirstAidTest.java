package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.Technique;
import hornbook.rulebook.fact.Urgency;
import org.junit.jupiter.api.Test;

/** First aid is done while the vet is on the way, and nothing else is. */
class FirstAidTest {
  private static final String PIERCED =
      "feet: [{limb: left-fore, shoeing: nailed, signs: {puncture: sole, objectInPlace: false}}]";

  @Test
  void aPiercedFootIsBandagedAndNothingElse() {
    Advice advice = Jobs.advise(PIERCED);
    FootAdvice foot = advice.feet().get(0);
    assertThat(foot.urgency()).contains(Urgency.NOW);
    assertThat(foot.firstChoice()).isEmpty();
    assertThat(foot.technique("dry-bandage").verdict()).isEqualTo(Verdict.WORKABLE);
    assertThat(foot.technique("poultice").verdict()).isEqualTo(Verdict.RULED_OUT);
    Plan bandage = Jobs.plan(advice, Technique.DRY_BANDAGE, PlanWishes.NONE);
    assertThat(bandage.workable()).isTrue();
    assertThat(Jobs.said(bandage, SheetPart.FIRST_AID)).contains("first-aid.ring");
    assertThat(bandage.lines(SheetPart.DRESS)).isEmpty();
    assertThat(bandage.nails()).isEmpty();
    assertThat(Jobs.plan(advice, Technique.NAIL_ON, PlanWishes.NONE).workable()).isFalse();
  }

  @Test
  void aNailLeftInIsBlockedAndNotDrawn() {
    Advice advice = Jobs.advise(PIERCED, "feet[0].signs.objectInPlace=true");
    Plan bandage = Jobs.plan(advice, Technique.DRY_BANDAGE, PlanWishes.NONE);
    assertThat(Jobs.said(bandage, SheetPart.FIRST_AID))
        .contains("first-aid.block")
        .doesNotContain("first-aid.shoe-off");
    assertThat(advice.feet().get(0).technique("draw-nail").verdict()).isEqualTo(Verdict.RULED_OUT);
  }

  @Test
  void nobodyIsAskedOnASoundFootWhatWasDoneToASoreOne() throws Exception {
    Advice advice = Jobs.exercise("sound-hunter-reset");
    assertThat(advice.feet())
        .isNotEmpty()
        .allSatisfy(
            foot -> assertThat(foot.questions()).noneMatch(one -> one.field().contains(".care.")));
  }

  @Test
  void aLayerOfCompositeIsAMixOfItsOwn() throws Exception {
    Plan plan =
        Jobs.plan(
            Jobs.exercise("showjumper-torn-side", "visit.airTemperature=22 C"),
            Technique.PROSTHETIC_WALL,
            Jobs.ANYWAY);
    double layers = Jobs.number(plan, "repair.layers", "layers").value();
    assertThat(layers).isGreaterThan(1);
    assertThat(plan.steps())
        .filteredOn(step -> step.says().instruction().id().equals("step.lay-next"))
        .hasSize((int) layers - 1);
  }
}
