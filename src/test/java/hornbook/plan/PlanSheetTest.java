package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.Advice;
import hornbook.advice.Verdict;
import hornbook.assessment.Side;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.MissingMeasure;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.PlannedNail;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.ShoeSizes;
import hornbook.plan.sheet.Technique;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What stands on the sheets of the exercises, and what does not. */
class PlanSheetTest {
  /** A wish for the toe to be brought back where the advice itself finds no reason to. */
  private static final PlanWishes ROLLED = PlanWishes.NONE.withSupports(List.of("rolled-toe"));

  private static final PlanWishes ANYWAY_ROLLED = Jobs.ANYWAY.withSupports(List.of("rolled-toe"));

  private static final Pattern HOLE = Pattern.compile("\\{(\\w+)}");

  private static Advice torn(String... settings) throws IOException {
    return Jobs.exercise("showjumper-torn-side", settings);
  }

  @Test
  void aTechniqueRuledOutIsRefusedWithItsReasonsAndHasNoWork() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.NAIL_ON, PlanWishes.NONE);
    assertThat(plan.workable()).isFalse();
    assertThat(plan.refused()).extracting(one -> one.id()).containsExactly("nail-on");
    assertThat(plan.lines()).isEmpty();
    assertThat(plan.steps()).isEmpty();
  }

  @Test
  void despiteThatItIsMadeAndTheReasonKept() throws IOException {
    Plan plan =
        Jobs.plan(torn(), Technique.NAIL_ON, PlanWishes.NONE.withDespite("one day, to the vet"));
    assertThat(plan.workable()).isTrue();
    assertThat(plan.wishes().despite()).isEqualTo("one day, to the vet");
    assertThat(plan.judged().verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(plan.nails()).isNotEmpty();
  }

  @Test
  void aSupportRuledOutRefusesTheSheetToo() throws IOException {
    Advice advice = Jobs.exercise("quarter-crack-that-bleeds");
    List<String> out =
        advice.feet().get(0).supports().stream()
            .filter(one -> one.verdict() == Verdict.RULED_OUT)
            .map(one -> one.id())
            .toList();
    assertThat(out).isNotEmpty();
    Plan plan = Jobs.plan(advice, Technique.NAIL_ON, PlanWishes.NONE.withSupports(out));
    assertThat(plan.refused()).extracting(one -> one.id()).containsExactlyElementsOf(out);
  }

  @Test
  void aDangerLeavesOnlyWhatToDoUntilTheVetComesWhateverIsWished() throws IOException {
    for (Technique technique : Technique.values()) {
      Plan plan = Jobs.plan(torn("feet[0].signs.objectInPlace=true"), technique, Jobs.ANYWAY);
      assertThat(plan.workable()).isFalse();
      assertThat(plan.stops()).isNotEmpty().allMatch(stop -> stop.meanwhile() != null);
      assertThat(plan.lines()).isEmpty();
      assertThat(plan.nails()).isEmpty();
      assertThat(plan.materials()).isEmpty();
    }
  }

  @Test
  void aDangerOnOneFootStopsTheWorkOnTheOther() throws IOException {
    Advice advice =
        Jobs.exercise("long-toe-under-run-heels", "feet[left-fore].signs.objectInPlace=true");
    Plan plan = PlanMaker.plan(advice, advice.feet().get(1), Technique.NAIL_ON, Jobs.ANYWAY);
    assertThat(plan.workable()).isFalse();
  }

  @Test
  void withTheVetDirectingTheSheetIsMade() throws IOException {
    Advice advice = torn("feet[0].signs.objectInPlace=true", "visit.vet=directing");
    Plan plan = Jobs.plan(advice, Technique.LEAVE_UNSHOD, Jobs.ANYWAY);
    assertThat(plan.workable()).isTrue();
  }

  @Test
  void theBranchShortOfWallIsNailedBehindTheLimitWithTheFewestAndForAShortTime()
      throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.NAIL_ON_ADAPTED, PlanWishes.NONE);
    assertThat(plan.judged().verdict()).isEqualTo(Verdict.WORKABLE);
    List<PlannedNail> outer =
        plan.nails().stream().filter(nail -> nail.side() == Side.LATERAL).toList();
    assertThat(outer).hasSize(2);
    assertThat(outer).anyMatch(PlannedNail::behind);
    assertThat(plan.nails().stream().filter(nail -> nail.side() == Side.MEDIAL))
        .hasSize(3)
        .noneMatch(PlannedNail::behind);
    assertThat(Jobs.said(plan, SheetPart.NAILS)).contains("nails.behind");
    assertThat(plan.interval().limit().id()).isEqualTo("waived.interval");
    assertThat(plan.nextVisit()).isEqualTo(LocalDate.of(2026, 4, 18).plusDays(28));
  }

  /** By hand: 48 mm torn, two feather edges of 20, 26 high, the wall before it 8 mm thick. */
  @Test
  void compositeIsTheLossAndItsFeatherEdgesAndWhatIsWasted() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.PROSTHETIC_WALL, Jobs.ANYWAY);
    Figure net = Jobs.number(plan, "repair.loss", "volume");
    double wall = Jobs.number(plan, "repair.loss", "thickness").value();
    assertThat(wall).isIn(8.0, 9.0);
    assertThat(net.value()).isCloseTo((48 + 20) * 26 * wall / 1000, within(1e-9));
    assertThat(Jobs.reckoned(plan, "adhesive in hand").value())
        .isCloseTo(net.value() * 1.2, within(1e-9));
    assertThat(Jobs.reckoned(plan, "weight of the adhesive in hand").value())
        .isCloseTo(net.value() * 1.2 * 1.17, within(1e-9));
  }

  @Test
  void compositeThatRunsIntoTheHeelIsLeftOpenThere() throws IOException {
    Plan plan =
        Jobs.plan(
            torn("feet[0].wall[2].to=165 mm", "feet[0].wall[3].from=165 mm"),
            Technique.PROSTHETIC_WALL,
            Jobs.ANYWAY);
    assertThat(Jobs.number(plan, "repair.heels", "free").value()).isLessThan(165);
    Plan ahead = Jobs.plan(torn(), Technique.PROSTHETIC_WALL, Jobs.ANYWAY);
    assertThat(Jobs.said(ahead, SheetPart.BUILD)).doesNotContain("repair.heels");
  }

  /**
   * By hand: 4 mm in layers of 1.2 is 4 on a wall (86 - 10 + 37 - 10) / 2 high, and 8 mm is 7 under
   * the foot, over wrap, wall of 9 mm and an eighth of an inch of sole.
   */
  @Test
  void tapeIsCountedInLayersTurnsMetresAndRolls() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(Jobs.reckoned(plan, "layers of tape").value()).isEqualTo(7);
    double wall = (86 - 10 + 37 - 10) / 2.0;
    double under = 4 + 9 + 3.2;
    assertThat(Jobs.reckoned(plan, "turns of tape").value())
        .isEqualTo(Math.ceil((4 * wall + 7 * under) / 50));
    double metres = Jobs.reckoned(plan, "casting tape in hand").value();
    assertThat(Jobs.reckoned(plan, "rolls of casting tape").value())
        .isEqualTo(Math.ceil(metres / 3.6));
    Plan thick = Jobs.plan(torn(), Technique.CAST_WRAP, Jobs.ANYWAY.withAdd(10.0));
    assertThat(Jobs.reckoned(thick, "casting tape in hand").value()).isGreaterThan(metres);
  }

  @Test
  void theWrapGrowsTheFootAndTheShoeByTheKitsList() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.CAST_WRAP, Jobs.ANYWAY.withAdd(6.0));
    assertThat(plan.after().width().value()).isEqualTo(124 + 8);
    assertThat(plan.shoe()).isEqualTo(new ShoeSizes("2", "3"));
    Plan wide = Jobs.plan(torn("feet[0].measures.width=138 mm"), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(wide.shoe().after()).isNull();
    assertThat(Jobs.said(wide, SheetPart.SHOE)).contains("shoe.no-size");
  }

  @Test
  void theWrapComesOffInTime() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(plan.interval().value()).isEqualTo(21);
    assertThat(Jobs.said(plan, SheetPart.GROWTH)).contains("growth.wrap-off-on");
  }

  @Test
  void theBreakoverComesBackByWhatTheFrogSays() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.GLUE_ON, ROLLED);
    assertThat(Jobs.number(plan, "dress.toe-back", "back").value()).isEqualTo(46 - 31);
    Plan near = Jobs.plan(torn("feet[0].measures.toeToFrog=30 mm"), Technique.GLUE_ON, ROLLED);
    assertThat(Jobs.said(near, SheetPart.DRESS)).contains("dress.toe-there");
  }

  @Test
  void aToeThatHasNotRunForwardIsLeftToTheShoe() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.GLUE_ON, ROLLED);
    assertThat(Jobs.said(plan, SheetPart.DRESS))
        .contains("dress.toe-keep")
        .doesNotContain("dress.toe-front");
    assertThat(plan.after().breakover().value())
        .isCloseTo(plan.before().breakover().value() - 15 + 2 / Math.tan(rad(51)), within(1e-9));
  }

  /**
   * By hand: a toe of 46 degrees, 9 mm thick, may lose 2.5 mm square to itself; the shoe the rest.
   */
  @Test
  void aLongToeIsDressedFromTheFrontAsFarAsItsWallAllows() throws IOException {
    Advice advice = Jobs.exercise("long-toe-under-run-heels");
    Plan plan = PlanMaker.plan(advice, advice.feet().get(0), Technique.NAIL_ON, Jobs.ANYWAY);
    double front = Jobs.number(plan, "dress.toe-front", "front").value();
    assertThat(front).isCloseTo((9 - 6.5) / Math.sin(rad(46)), within(1e-9));
    assertThat(Jobs.number(plan, "dress.toe-shoe", "rest").value())
        .isCloseTo(52 - 31 - front, within(1e-9));
  }

  @Test
  void aThinToeIsNotRaspedAndABareOneComesBackNoFurtherThanItsWallAllows() throws IOException {
    Plan thin =
        Jobs.plan(torn("feet[0].wall[0].thickness=6 mm"), Technique.LEAVE_UNSHOD, ANYWAY_ROLLED);
    assertThat(Jobs.said(thin, SheetPart.DRESS)).contains("dress.toe-thin");
    assertThat(thin.after().breakover().value()).isEqualTo(65);
    Plan bare = Jobs.plan(torn(), Technique.LEAVE_UNSHOD, ANYWAY_ROLLED);
    assertThat(bare.after().breakover().value())
        .isCloseTo(65 - (9 - 6.5) / Math.sin(rad(51)), within(1e-9));
  }

  private static double rad(double degrees) {
    return Math.toRadians(degrees);
  }

  @Test
  void aFootIsNarrowerByTheFlareThatComesOff() throws IOException {
    String flared = "feet[0].wall[0].";
    Plan plan =
        Jobs.plan(
            torn(flared + "state=flared", flared + "flare=5 mm"),
            Technique.LEAVE_UNSHOD,
            Jobs.ANYWAY);
    assertThat(plan.after().width().value()).isEqualTo(124 - (9 - 6.5));
    Plan unmeasured = Jobs.plan(torn(flared + "state=flared"), Technique.GLUE_ON, Jobs.ANYWAY);
    assertThat(unmeasured.after().width().known()).isFalse();
    assertThat(unmeasured.shoe()).isEqualTo(new ShoeSizes("2", null));
    assertThat(unmeasured.missing()).extracting(MissingMeasure::field).contains(flared + "flare");
  }

  @Test
  void aBranchNobodyMeasuredLeavesTheBearingUnknown() throws IOException {
    Plan plan = Jobs.plan(torn("kit.shoe.thickness=unknown"), Technique.GLUE_ON, PlanWishes.NONE);
    assertThat(plan.after().bearingLength().known()).isFalse();
    assertThat(plan.after().heelSupport().known()).isFalse();
  }

  @Test
  void aLossOfUnknownHeightIsNotTakenForNone() throws IOException {
    Plan plan =
        Jobs.plan(torn("feet[0].wall[2].height=unknown"), Technique.NAIL_ON_ADAPTED, Jobs.ANYWAY);
    assertThat(Jobs.said(plan, SheetPart.GROWTH))
        .contains("growth.height-unknown")
        .doesNotContain("growth.no-defect");
    Plan unmapped = Jobs.plan(torn("feet[0].wall=unknown"), Technique.NAIL_ON_ADAPTED, Jobs.ANYWAY);
    assertThat(Jobs.said(unmapped, SheetPart.GROWTH))
        .contains("growth.unmapped")
        .doesNotContain("growth.no-defect");
  }

  @Test
  void theVetIsNotToldThatNothingWasFoundWhereNotAllWasLookedAt() throws IOException {
    Plan half = Jobs.plan(Jobs.exercise("half-seen-foot"), Technique.GLUE_ON, Jobs.ANYWAY);
    assertThat(Jobs.said(half, SheetPart.VET)).contains("vet.unseen").doesNotContain("vet.sound");
    Plan seen = Jobs.plan(torn(), Technique.GLUE_ON, Jobs.ANYWAY);
    assertThat(Jobs.said(seen, SheetPart.VET)).contains("vet.sound").doesNotContain("vet.unseen");
  }

  @Test
  void aFoalIsNotSentToWork() throws IOException {
    Plan foal = Jobs.plan(Jobs.exercise("foal-trim"), Technique.LEAVE_UNSHOD, Jobs.ANYWAY);
    assertThat(Jobs.said(foal, SheetPart.OWNER))
        .contains("owner.foal")
        .doesNotContain("owner.work");
  }

  /** A horse trots on all its feet. */
  @Test
  void whatACallOnOneFootForbidsNoSheetOfAnotherAsksFor() throws IOException {
    String two =
        """
        feet:
          - {limb: left-fore, lameness: 0}
          - {limb: right-fore, lameness: %s}
        """;
    Plan lame = Jobs.plan(Jobs.advise(two.formatted("3")), Technique.LEAVE_UNSHOD, Jobs.ANYWAY);
    assertThat(Jobs.said(lame, SheetPart.TROT))
        .contains("trot.for-the-vet")
        .doesNotContain("trot.straight", "trot.turn");
    Plan sound = Jobs.plan(Jobs.advise(two.formatted("0")), Technique.LEAVE_UNSHOD, Jobs.ANYWAY);
    assertThat(Jobs.said(sound, SheetPart.TROT))
        .contains("trot.straight", "trot.turn")
        .doesNotContain("trot.for-the-vet");
  }

  /** The outer branch takes one nail of the usual three in horn: two more may go into the wrap. */
  @Test
  void nailsForTheWrapAreToHandToo() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(plan.materials())
        .filteredOn(one -> one.label().contains("nails"))
        .extracting(Figure::value)
        .containsExactly(4.0, 2.0);
  }

  @Test
  void theVetIsToldOfEveryCrack() throws IOException {
    Plan cracked =
        Jobs.plan(
            Jobs.exercise("quarter-crack-from-the-coronet"),
            Technique.NAIL_ON_ADAPTED,
            Jobs.ANYWAY);
    assertThat(Jobs.said(cracked, SheetPart.VET)).contains("vet.crack");
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.GLUE_ON, Jobs.ANYWAY), SheetPart.VET))
        .doesNotContain("vet.crack");
  }

  @Test
  void nailsThatStandInAWrapAreTappedToo() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(plan.nails()).isNotEmpty();
    assertThat(Jobs.said(plan, SheetPart.TROT)).contains("trot.nails", "trot.hairline");
  }

  /** By hand: 51 degrees before and after, the pastern at 55: broken back by 4. */
  @Test
  void anAxisThatIsBrokenStillIsSaid() throws IOException {
    Plan plan =
        Jobs.plan(torn("feet[0].measures.pasternAngle=55 deg"), Technique.GLUE_ON, PlanWishes.NONE);
    assertThat(Jobs.number(plan, "effect.axis-back", "by").value()).isEqualTo(4);
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.GLUE_ON, PlanWishes.NONE), SheetPart.EFFECT))
        .doesNotContain("effect.axis-back", "effect.axis-forward");
  }

  /** A wall of 9 mm that has to keep 6.5 gives 2.5, however far the flare stands out. */
  @Test
  void noMoreOfAFlareComesOffThanTheWallCanSpare() throws IOException {
    String flared =
        """
        feet:
          - limb: left-fore
            wall: [{side: lateral, from: 60, to: 120, state: flared, thickness: 9, flare: 20}]
        """;
    Plan plan = Jobs.plan(Jobs.advise(flared), Technique.LEAVE_UNSHOD, Jobs.ANYWAY);
    double least = Jobs.number(plan, "dress.flare-part", "least").value();
    assertThat(Jobs.number(plan, "dress.flare-part", "off").value()).isEqualTo(9 - least);
    assertThat(Jobs.number(plan, "dress.flare-part", "flare").value()).isEqualTo(20);
    Plan little =
        Jobs.plan(
            Jobs.advise(flared.replace("flare: 20", "flare: 2")),
            Technique.LEAVE_UNSHOD,
            Jobs.ANYWAY);
    assertThat(Jobs.number(little, "dress.flare", "off").value()).isEqualTo(2);
    Plan thin =
        Jobs.plan(
            Jobs.advise(flared.replace("thickness: 9", "thickness: 5")),
            Technique.LEAVE_UNSHOD,
            Jobs.ANYWAY);
    assertThat(Jobs.said(thin, SheetPart.DRESS)).contains("dress.flare-none");
    flared = flared.replace("flare: 20", "flare: 5");
    Plan unmeasured =
        Jobs.plan(
            Jobs.advise(flared.replace(", flare: 5", "")), Technique.LEAVE_UNSHOD, Jobs.ANYWAY);
    assertThat(unmeasured.missing())
        .extracting(MissingMeasure::field)
        .contains("feet[0].wall[0].flare");
  }

  @Test
  void whatWasNotMeasuredIsAskedForAndNotGuessed() {
    Plan plan =
        Jobs.plan(Jobs.advise("feet: [{limb: left-fore}]"), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(plan.missing())
        .extracting(MissingMeasure::field)
        .contains(
            "feet[0].measures.toeLength",
            "feet[0].measures.bearingLength",
            "feet[0].wall",
            "kit.wrap.layerThickness",
            "kit.shoe.thickness",
            "kit.shoeSizes",
            "visit.date",
            "visit.airTemperature");
    assertThat(plan.after().toeLength().known()).isFalse();
    assertThat(plan.nails()).isEmpty();
    assertThat(plan.materials()).isEmpty();
    assertThat(plan.nextVisit()).isNull();
    assertThat(plan.interval().value()).isEqualTo(21);
  }

  @Test
  void withoutADayGrowthIsCountedInDays() throws IOException {
    Plan plan = Jobs.plan(torn("visit.date=unknown"), Technique.GLUE_ON, PlanWishes.NONE);
    assertThat(plan.aboveNailExit().on(plan.aboveNailExit().mean())).isNull();
    assertThat(plan.aboveNailExit().mean().value()).isPositive();
    assertThat(Jobs.said(plan, SheetPart.OWNER)).contains("owner.next-days");
  }

  @Test
  void anUprightFootIsToldThatEqualDepthHarmsIt() throws IOException {
    Plan plan =
        Jobs.plan(
            Jobs.exercise("broken-forward-overgrown-heels"),
            Technique.CAST_WRAP,
            Jobs.ANYWAY.withAdd(8.0));
    assertThat(Jobs.reckoned(plan, "heels to be lowered, along the wall").value()).isPositive();
    Plan club =
        Jobs.plan(
            Jobs.exercise("club-foot-and-its-pair"), Technique.CAST_WRAP, Jobs.ANYWAY.withAdd(8.0));
    assertThat(Jobs.said(club)).contains("dress.club", "effect.equal-harms");
  }

  @Test
  void heelsAreLoweredTowardThePasternButNoMoreThanOneVisitAllows() throws IOException {
    Plan plan =
        Jobs.plan(Jobs.exercise("broken-forward-overgrown-heels"), Technique.NAIL_ON, Jobs.ANYWAY);
    assertThat(plan.before().toeAngle().value() - plan.after().toeAngle().value())
        .isCloseTo(3, within(1e-9));
    assertThat(Jobs.said(plan, SheetPart.EFFECT)).doesNotContain("effect.too-much");
  }

  @Test
  void acrylicColderThanTheTableGivesNoMinutesAndTheOwnerKeepsTheHorseIn() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.GLUE_ON, PlanWishes.NONE);
    assertThat(Jobs.said(plan)).contains("clock.acrylic-beyond", "owner.first-day-unknown");
    assertThat(Jobs.number(plan, "clock.acrylic-beyond", "full").low()).isEqualTo(1440);
  }

  @Test
  void whatTheShoeAndItsSupportsTakeLiesToHand() throws IOException {
    PlanWishes wishes = Jobs.ANYWAY.withSupports(List.of("pad", "treatment-plate", "crack-lacing"));
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.NAIL_ON, wishes), SheetPart.TO_HAND))
        .contains("hand.shoe-nailed", "hand.pad", "hand.plate", "hand.lacing");
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.LEAVE_UNSHOD, wishes), SheetPart.TO_HAND))
        .containsExactly("hand.trim", "hand.off-nailed");
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.CAST_WRAP, Jobs.ANYWAY)))
        .contains("hand.shoe-nailed")
        .doesNotContain("hand.shoe");
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.GLUE_ON, Jobs.ANYWAY)))
        .contains("hand.shoe", "prepare.shoe")
        .doesNotContain("hand.pad", "hand.plate");
  }

  @Test
  void whatDrawsTheOldShoeLiesToHandWhereItComesOff() throws IOException {
    for (String old : List.of("nailed", "glued", "wrapped")) {
      Advice advice = torn("feet[0].lostShoe=false", "feet[0].shoeing=" + old);
      Plan plan = Jobs.plan(advice, Technique.NAIL_ON_ADAPTED, Jobs.ANYWAY);
      assertThat(Jobs.said(plan, SheetPart.TO_HAND)).contains("hand.trim", "hand.off-" + old);
      assertThat(Jobs.said(plan)).contains("step.off");
    }
    Advice bare = torn("feet[0].lostShoe=false", "feet[0].shoeing=unshod");
    assertThat(Jobs.said(Jobs.plan(bare, Technique.NAIL_ON_ADAPTED, Jobs.ANYWAY)))
        .contains("hand.trim")
        .doesNotContain("hand.off-nailed", "hand.off-glued", "hand.off-wrapped", "step.off");
    Advice nailed = torn("feet[0].lostShoe=false", "feet[0].shoeing=nailed");
    assertThat(Jobs.said(Jobs.plan(nailed, Technique.POULTICE, Jobs.ANYWAY)))
        .contains("first-aid.shoe-off", "hand.off-nailed");
    assertThat(Jobs.said(Jobs.plan(nailed, Technique.DRY_BANDAGE, Jobs.ANYWAY)))
        .doesNotContain("first-aid.shoe-off", "hand.off-nailed");
  }

  /** With nails the shoe is on before the wall is built: nobody can rasp it level from below. */
  @Test
  void aWallRebuiltOverNailsIsRaspedDownToTheShoe() throws IOException {
    Plan nailed = Jobs.plan(torn(), Technique.PROSTHETIC_WALL, Jobs.ANYWAY);
    assertThat(nailed.nails()).isNotEmpty();
    assertThat(Jobs.said(nailed))
        .contains("hand.shoe-nailed", "repair.dress-shod")
        .doesNotContain("hand.shoe", "repair.dress");
    Plan bonded = Jobs.plan(torn("feet[0].wall=unknown"), Technique.PROSTHETIC_WALL, Jobs.ANYWAY);
    assertThat(bonded.nails()).isEmpty();
    assertThat(Jobs.said(bonded)).contains("hand.shoe").doesNotContain("hand.shoe-nailed");
  }

  @Test
  void aWrapIsWoundBeforeItIsNailedAndABuiltWallIsNailedFirst() {
    assertThat(SheetPart.of(Technique.CAST_WRAP))
        .containsSubsequence(
            SheetPart.PREPARE, SheetPart.BUILD, SheetPart.NAILS, SheetPart.SHOE, SheetPart.EFFECT)
        .containsExactlyInAnyOrder(SheetPart.values());
    for (Technique technique : List.of(Technique.PROSTHETIC_WALL, Technique.GLUE_ON)) {
      assertThat(SheetPart.of(technique)).containsExactly(SheetPart.values());
    }
  }

  @Test
  void theBondEndsAtOnePlaceOnTheWholeSheet() throws IOException {
    Plan plan = Jobs.plan(torn(), Technique.GLUE_ON, PlanWishes.NONE);
    Figure free = Jobs.number(plan, "glue.heels", "free");
    assertThat(Jobs.number(plan, "shoe.heels-glued", "free")).isEqualTo(free);
    assertThat(free.value()).isEqualTo(Math.floor(free.value()));
    assertThat(Jobs.said(plan)).doesNotContain("shoe.heels", "shoe.heels-bonded");
  }

  /** By hand: a clip of 2.5 shoe thicknesses, 17.5 mm on a pony's shoe of 7. */
  @Test
  void aClipIsAsWideAsTheShoeIsThickSoManyTimes() throws IOException {
    PlanWishes clips = Jobs.ANYWAY.withSupports(List.of("clips"));
    Plan pony = Jobs.plan(torn("kit.shoe.thickness=7 mm"), Technique.NAIL_ON, clips);
    assertThat(pony.clips()).isNotEmpty().allMatch(clip -> clip.width() == 17.5);
    Plan draught = Jobs.plan(torn("kit.shoe.thickness=14 mm"), Technique.NAIL_ON, clips);
    assertThat(draught.clips()).isNotEmpty().allMatch(clip -> clip.width() == 35);
    Plan unknown = Jobs.plan(torn("kit.shoe.thickness=unknown"), Technique.NAIL_ON, clips);
    assertThat(unknown.clips()).isNotEmpty().allMatch(clip -> clip.width() == 25);
  }

  /**
   * By hand: a third of a pony's toe of 66 mm is 22, of 45 mm 15, under the lowest clench of 16.
   */
  @Test
  void noNailLeavesTheWallOfASmallFootHigherThanAThirdOfItsToe() throws IOException {
    Plan pony = Jobs.plan(torn("feet[0].measures.toeLength=66 mm"), Technique.NAIL_ON, Jobs.ANYWAY);
    assertThat(Jobs.number(pony, "nails.exit", "most").value()).isCloseTo(66 * 0.333, within(1e-9));
    Plan riding = Jobs.plan(torn(), Technique.NAIL_ON, Jobs.ANYWAY);
    assertThat(Jobs.number(riding, "nails.exit", "most").value())
        .isCloseTo(86 * 0.333, within(1e-9));
    Plan draught =
        Jobs.plan(torn("feet[0].measures.toeLength=125 mm"), Technique.NAIL_ON, Jobs.ANYWAY);
    assertThat(Jobs.number(draught, "nails.exit", "most").value()).isEqualTo(41);
    Plan low = Jobs.plan(torn("feet[0].measures.toeLength=45 mm"), Technique.NAIL_ON, Jobs.ANYWAY);
    assertThat(Jobs.number(low, "nails.exit-low", "exit").value())
        .isCloseTo(45 * 0.333, within(1e-9));
    assertThat(Jobs.said(low)).doesNotContain("nails.exit");
  }

  /** By hand: 20.7 % of 180 mm is 37.26, so a frog point 62 back leaves 24.74. */
  @Test
  void theBreakoverOfALongFootMovesBackLess() throws IOException {
    Plan plan =
        Jobs.plan(
            torn("feet[0].measures.bearingLength=180 mm", "feet[0].measures.toeToFrog=62 mm"),
            Technique.GLUE_ON,
            ANYWAY_ROLLED);
    assertThat(Jobs.number(plan, "dress.toe-back", "back").value()).isCloseTo(24.74, within(1e-9));
  }

  /** The one test of tape stood in a room of 24 C. */
  @Test
  void airThatIsNotThatOfTheTestIsSaid() throws IOException {
    String air = "visit.airTemperature=";
    Plan cold = Jobs.plan(torn(air + "23 C"), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(Jobs.said(cold)).contains("clock.tape-air").doesNotContain("clock.tape-air-warm");
    Plan warm = Jobs.plan(torn(air + "25 C"), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(Jobs.said(warm)).contains("clock.tape-air-warm").doesNotContain("clock.tape-air");
    Plan same = Jobs.plan(torn(air + "24 C"), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(Jobs.said(same)).doesNotContain("clock.tape-air", "clock.tape-air-warm");
  }

  @Test
  void aSecondRollIsOpenedOnlyWhenTheFirstIsWound() throws IOException {
    Plan one = Jobs.plan(torn("kit.wrap.rollLength=20 m"), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(Jobs.said(one)).doesNotContain("wrap.one-roll");
    Plan two = Jobs.plan(torn("kit.wrap.rollLength=2 m"), Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(Jobs.reckoned(two, "rolls of casting tape").value()).isEqualTo(2);
    assertThat(Jobs.said(two)).contains("wrap.one-roll");
  }

  /** Thin horn takes no nail, the wrap does: the shoe is fitted and nailed all the same. */
  @Test
  void aShoeNailedToTheWrapAloneStandsOnTheClock() throws IOException {
    Plan plan =
        Jobs.plan(
            torn(
                "feet[0].wall[0].thickness=5 mm",
                "feet[0].wall[1].thickness=5 mm",
                "feet[0].wall[3].thickness=5 mm"),
            Technique.CAST_WRAP,
            Jobs.ANYWAY);
    assertThat(plan.nails()).isEmpty();
    assertThat(Jobs.said(plan)).contains("nails.into-wrap", "step.fit", "step.nail", "shoe.heels");
  }

  @Test
  void aBootGoesNotOverAShoeAndATrailerOnAForeFootIsForTheVet() throws IOException {
    PlanWishes wishes = Jobs.ANYWAY.withSupports(List.of("boot", "trailer"));
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.NAIL_ON, wishes), SheetPart.SHOE))
        .contains("support.boot-shod", "support.trailer-fore")
        .doesNotContain("support.boot", "support.trailer");
    Plan hind = Jobs.plan(torn("feet[0].limb=left-hind"), Technique.NAIL_ON, wishes);
    assertThat(Jobs.said(hind, SheetPart.SHOE))
        .contains("support.trailer")
        .doesNotContain("support.trailer-fore");
    PlanWishes boot = Jobs.ANYWAY.withSupports(List.of("boot"));
    assertThat(Jobs.said(Jobs.plan(torn(), Technique.LEAVE_UNSHOD, boot), SheetPart.SHOE))
        .containsExactly("support.boot");
  }

  @Test
  void everySheetHasTenLinesForTheOwner() throws IOException {
    for (Plan plan : Jobs.all(Jobs.ANYWAY)) {
      if (plan.workable()) {
        assertThat(plan.lines(SheetPart.OWNER)).as(plan.judged().id()).hasSize(10);
      }
    }
  }

  @Test
  void aTechniqueThatIsRuledOutStillBringsItsCautions() throws IOException {
    Advice advice = Jobs.exercise("seedy-toe-in-work");
    Plan plan = Jobs.plan(advice, Technique.CAST_WRAP, Jobs.ANYWAY);
    assertThat(plan.judged().verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(advice.feet().get(0).cautions()).noneMatch(one -> one.rule().equals("M015"));
    assertThat(plan.cautions()).anyMatch(one -> one.rule().equals("M015"));
    Plan shod = Jobs.plan(advice, Technique.NAIL_ON_ADAPTED, Jobs.ANYWAY);
    assertThat(shod.cautions()).noneMatch(one -> one.rule().equals("M015"));
  }

  @Test
  void theSameAskedTwiceGivesTheSame() throws IOException {
    Advice advice = torn();
    for (Technique technique : Technique.values()) {
      assertThat(Jobs.plan(advice, technique, Jobs.ANYWAY))
          .isEqualTo(Jobs.plan(advice, technique, Jobs.ANYWAY));
    }
  }

  @Test
  void everyNumberNamesItsFormulaAndItsGround() throws IOException {
    int seen = 0;
    for (Plan plan : Jobs.all(Jobs.ANYWAY.withAdd(8.0))) {
      for (Figure one : plan.reckoned()) {
        Set<String> named = new TreeSet<>();
        Matcher hole = HOLE.matcher(one.formula());
        while (hole.find()) {
          named.add(hole.group(1));
        }
        assertThat(one.basis()).as(one.label()).isNotNull();
        assertThat(one.parts().keySet()).as(one.label()).containsAll(named);
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(1000);
  }
}
