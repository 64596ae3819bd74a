package hornbook.madeup;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Verdict;
import hornbook.advice.fact.Held;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetLine;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;
import hornbook.rules.Shipped;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Nothing that a standing call for the vet holds back is opened, on any foot or job sheet. */
class HeldBackTest {
  private static final PlanWishes ANYWAY = PlanWishes.NONE.withDespite("to see the sheet");

  @Test
  void nothingHeldBackIsOpenedOnAnyFoot() throws Exception {
    AtomicInteger calls = new AtomicInteger();
    AtomicInteger beyond = new AtomicInteger();
    AtomicInteger now = new AtomicInteger();
    new Horses(31)
        .each(
            horse -> {
              Advice advice = Shipped.ADVISOR.judge(horse);
              for (FootAdvice from : advice.feet()) {
                for (ReferralGiven call : from.referrals()) {
                  calls.incrementAndGet();
                  closed(from, call.reserves(), call.rule());
                  advice.feet().forEach(to -> beyond.addAndGet(elsewhere(call, from, to)));
                }
              }
              boolean called = advice.urgency().filter(Urgency.NOW::equals).isPresent();
              if (called && !Horses.directed(horse)) {
                now.incrementAndGet();
                advice.feet().forEach(HeldBackTest::nothingChosen);
              }
            });
    assertThat(calls.get()).isGreaterThan(Horses.HOW_MANY / 2);
    assertThat(beyond.get()).isGreaterThan(Horses.HOW_MANY / 10);
    assertThat(now.get()).isGreaterThan(Horses.HOW_MANY / 20);
  }

  private static int elsewhere(ReferralGiven call, FootAdvice from, FootAdvice to) {
    if (!call.reserves().extent().reaches(from.limb(), to.limb())) {
      return 0;
    }
    closed(to, call.reserves(), call.rule());
    assertThat(to.sheet().held().stream().map(Held::from)).contains(from.limb());
    return 1;
  }

  private static void nothingChosen(FootAdvice foot) {
    assertThat(foot.firstChoice()).isEmpty();
    assertThat(foot.techniques())
        .filteredOn(one -> one.verdict() == Verdict.WORKABLE)
        .allMatch(one -> Shipped.BOOK.firstAid(one.id()));
  }

  private static void closed(FootAdvice foot, Reserves reserves, String rule) {
    for (String technique : reserves.techniques()) {
      closed(foot.technique(technique), rule);
    }
    for (String support : reserves.supports()) {
      closed(foot.support(support), rule);
    }
  }

  private static void closed(OptionAdvice judged, String rule) {
    assertThat(judged.verdict())
        .as("%s while %s stands", judged.id(), rule)
        .isNotIn(Verdict.FIRST_CHOICE, Verdict.WORKABLE);
  }

  @Test
  void noJobSheetTellsToDoWhatIsHeldBack() throws Exception {
    AtomicInteger held = new AtomicInteger();
    new Horses(41)
        .each(
            horse -> {
              Advice advice = Shipped.ADVISOR.judge(horse);
              FootAdvice foot = advice.feet().get(advice.feet().size() - 1);
              sheet(PlanMaker.plan(advice, foot, Horses.technique(horse), ANYWAY), held);
            });
    assertThat(held.get()).isGreaterThan(Horses.HOW_MANY / 10);
  }

  private static void sheet(Plan plan, AtomicInteger held) {
    Reserves reserves = plan.foot().reserves();
    boolean any = !reserves.cuts().isEmpty() || !reserves.moves().isEmpty();
    if (plan.workable() && any) {
      held.incrementAndGet();
      for (List<SheetLine> lines : plan.lines().values()) {
        for (SheetLine line : lines) {
          assertThat(line.instruction().heldBackBy(reserves)).as(line.instruction().id()).isFalse();
        }
      }
    }
  }
}
