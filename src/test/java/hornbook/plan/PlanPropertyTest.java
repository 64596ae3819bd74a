package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.AnyAssessment;
import hornbook.assessment.Assessment;
import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.foot.Trim;
import hornbook.plan.effect.FootNumbers;
import hornbook.plan.sheet.GrowthDates;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.PlannedClip;
import hornbook.plan.sheet.PlannedNail;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.Technique;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What has to be true of every sheet, whatever the foot. */
class PlanPropertyTest {
  private static final double SPACING = limit("nails.spacing");
  private static final double LEAST_WALL = limit("nails.wall.least");
  private static final double CLEAR = limit("nails.end-clearance");

  private static double limit(String id) {
    return Shipped.BOOK.limits().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow()
        .value();
  }

  @Provide
  Arbitrary<String> walls() {
    return AnyWall.written();
  }

  @Provide
  Arbitrary<Technique> techniques() {
    return Arbitraries.of(Technique.values());
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return AnyAssessment.valid();
  }

  private static Advice foot(String limb, String wall) {
    return Jobs.advise(
        """
        feet:
          - limb: %s
            measures: {toeLength: 86, heelLength: 36, toeAngle: 50, bearingLength: 130, width: 124}
            wall: %s
        """
            .formatted(limb, wall));
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void nailsStandApartInSoundWallAheadOfTheLimit(
      @ForAll("walls") String wall,
      @ForAll("techniques") Technique technique,
      @ForAll boolean fore,
      @ForAll boolean clips) {
    Advice advice = foot(fore ? "left-fore" : "left-hind", wall);
    PlanWishes wishes =
        clips && technique.shod() ? Jobs.ANYWAY.withSupports(List.of("clips")) : Jobs.ANYWAY;
    Plan plan = Jobs.plan(advice, technique, wishes);
    SheetDraft draft = new SheetDraft(advice, advice.feet().get(0), technique, wishes);
    double usual = draft.readings().rearmostNail();
    double waived = draft.readings().limits().nailing().rearmostWaived(draft.readings().outline());
    for (Side side : Side.values()) {
      double last = Double.NEGATIVE_INFINITY;
      for (PlannedNail nail : plan.nails()) {
        if (nail.side() == side) {
          double at = nail.at().value();
          assertThat(at - last).isGreaterThanOrEqualTo(SPACING - 1e-6);
          assertThat(nail.stretch().state()).isEqualTo(WallState.SOUND);
          assertThat(nail.stretch().side()).isEqualTo(side);
          assertThat(at).isBetween(nail.stretch().from(), nail.stretch().to());
          assertThat(nail.stretch().thickness()).isGreaterThanOrEqualTo(LEAST_WALL);
          boolean mayStandBehind = technique == Technique.NAIL_ON_ADAPTED;
          assertThat(at).isLessThanOrEqualTo((mayStandBehind ? waived : usual) + 1e-6);
          assertThat(nail.behind()).isEqualTo(at > usual);
          last = at;
        }
      }
    }
    for (PlannedClip clip : plan.clips()) {
      for (PlannedNail nail : plan.nails()) {
        if (clip.side() == null || clip.side() == nail.side()) {
          assertThat(Math.abs(nail.at().value() - clip.at()))
              .isGreaterThanOrEqualTo(clip.width() / 2 - 1e-6);
        }
      }
    }
  }

  /** As the rule base has it; a lower loss comes off with the trim and has no date. */
  private static final double USUAL_TRIM =
      Shipped.BOOK.limits().stream()
          .filter(one -> one.id().equals("trim.usual") && one.age() != Limit.Age.FOAL)
          .findFirst()
          .orElseThrow()
          .value();

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void nailsKeepClearOfWhateverEndsTheSoundWall(@ForAll("walls") String wall) {
    Advice advice = foot("left-fore", wall);
    Plan plan = Jobs.plan(advice, Technique.NAIL_ON, Jobs.ANYWAY);
    // Nails go into the wall as an ordinary trim leaves it; none of these walls says how long ago
    // the foot was shod, so that is the usual amount.
    Trim usual = new Trim(USUAL_TRIM, Trim.Known.USUAL);
    usual.off(advice.assessment().feet().get(0).wall()).stream()
        .filter(stretch -> stretch.state() != WallState.SOUND)
        .forEach(
            stretch ->
                plan.nails().stream()
                    .filter(nail -> nail.side() == stretch.side())
                    .forEach(
                        nail -> {
                          double at = nail.at().value();
                          boolean ahead = at <= stretch.from() - CLEAR + 1e-6;
                          boolean behind = at >= stretch.to() + CLEAR - 1e-6;
                          assertThat(ahead || behind).isTrue();
                        }));
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void moreThicknessNeverShortensTheFoot(
      @ForAll @DoubleRange(min = 0, max = 40) double one,
      @ForAll @DoubleRange(min = 0, max = 40) double other,
      @ForAll("techniques") Technique technique) {
    if (!technique.shod()) {
      return;
    }
    FootNumbers thin = built(technique, Math.min(one, other));
    FootNumbers thick = built(technique, Math.max(one, other));
    assertThat(thick.toeLength().value()).isGreaterThanOrEqualTo(thin.toeLength().value());
    assertThat(thick.heelLength().value()).isGreaterThanOrEqualTo(thin.heelLength().value());
    assertThat(thick.width().value()).isGreaterThanOrEqualTo(thin.width().value());
    assertThat(thick.bearingLength().value())
        .isGreaterThanOrEqualTo(thin.bearingLength().value() - 1e-9);
    assertThat(thick.toeAngle().value()).isCloseTo(thin.toeAngle().value(), within(1e-9));
  }

  private static FootNumbers built(Technique technique, double add) {
    return Jobs.measured(
            "toeLength: 88, heelLength: 31, toeAngle: 49, bearingLength: 128, width: 122,"
                + " toeToWidest: 64",
            technique,
            Jobs.ANYWAY.withAdd(add))
        .after();
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void moreGrowthNeverPostponesADate(
      @ForAll @IntRange(min = 7, max = 90) int height,
      @ForAll @DoubleRange(min = 1, max = 3) double faster) {
    String foot =
        """
        visit: {date: 2026-03-01}
        feet:
          - limb: left-fore
            wall: [{side: medial, from: 0, to: 40, state: broken-away, height: %d}]
        """
            .formatted(height);
    Plan usual = Jobs.plan(Jobs.advise(foot), Technique.NAIL_ON_ADAPTED, Jobs.ANYWAY);
    Advisor quick = new Advisor(Shipped.RULES.under(growing(faster)));
    Plan sooner =
        Jobs.plan(
            quick.advise(usual.advice().assessment()), Technique.NAIL_ON_ADAPTED, Jobs.ANYWAY);
    notLater(sooner.ground(), usual.ground());
    notLater(sooner.aboveNailExit(), usual.aboveNailExit());
  }

  private static Rulebook growing(double faster) {
    return Shipped.BOOK.withLimits(
        Shipped.BOOK.limits().stream()
            .map(one -> one.id().startsWith("growth.") ? faster(one, faster) : one)
            .toList());
  }

  private static Limit faster(Limit rate, double faster) {
    return rate.withValue(rate.value() * faster);
  }

  private static void notLater(GrowthDates sooner, GrowthDates usual) {
    assertThat(sooner.on(sooner.slow())).isBeforeOrEqualTo(usual.on(usual.slow()));
    assertThat(sooner.on(sooner.mean())).isBeforeOrEqualTo(usual.on(usual.mean()));
    assertThat(sooner.on(sooner.fast())).isBeforeOrEqualTo(usual.on(usual.fast()));
    assertThat(usual.on(usual.fast())).isBeforeOrEqualTo(usual.on(usual.mean()));
    assertThat(usual.on(usual.mean())).isBeforeOrEqualTo(usual.on(usual.slow()));
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void anyAssessmentGivesASheetThatSaysNothingItDoesNotKnow(
      @ForAll("assessments") Assessment assessment, @ForAll("techniques") Technique technique) {
    Advice advice = Jobs.advise(assessment);
    Plan plan = Jobs.plan(advice, technique, Jobs.ANYWAY);
    plan.lines()
        .values()
        .forEach(
            lines ->
                lines.forEach(
                    line -> line.figures().forEach(figure -> assertThat(figure.known()).isTrue())));
    plan.steps().forEach(step -> assertThat(step.minutes().known()).isTrue());
    plan.materials().forEach(one -> assertThat(one.known()).isTrue());
    if (plan.workable()) {
      assertThat(plan.lines(SheetPart.OWNER)).hasSize(10);
    } else {
      assertThat(plan.lines()).isEmpty();
      assertThat(plan.nails()).isEmpty();
    }
  }
}
