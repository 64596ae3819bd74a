package hornbook.madeup;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Verdict;
import hornbook.assessment.Assessment;
import hornbook.rulebook.fact.Bearing;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.RuleCase;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Where nothing can be done on a foot without the vet, the page also says who rings, and how soon.
 */
class VetNeedTest {
  @Test
  void whatNeedsTheVetCallsTheVet() throws Exception {
    AtomicInteger needs = new AtomicInteger();
    Set<String> without = new ConcurrentSkipListSet<>();
    Consumer<Assessment> look =
        horse ->
            Shipped.ADVISOR.judge(horse).feet().stream()
                .filter(VetNeedTest::nothingOpen)
                .forEach(
                    foot -> {
                      int found = (int) needs(foot).count();
                      needs.addAndGet(Math.min(found, 1));
                      if (foot.referrals().isEmpty() && foot.sheet().held().isEmpty()) {
                        needs(foot).forEach(one -> without.add(one.rule()));
                      }
                    });
    new Horses(67).each(look);
    for (RuleCase one : Shipped.ruleCases().values()) {
      look.accept(one.assessment());
    }
    assertThat(without).isEmpty();
    assertThat(needs.get()).isGreaterThan(Horses.HOW_MANY / 10);
  }

  private static boolean nothingOpen(FootAdvice foot) {
    return foot.techniques().stream()
        .noneMatch(
            one -> one.verdict() == Verdict.FIRST_CHOICE || one.verdict() == Verdict.WORKABLE);
  }

  private static Stream<ReasonGiven> needs(FootAdvice foot) {
    return foot.techniques().stream()
        .map(OptionAdvice::reasons)
        .flatMap(reasons -> reasons.stream())
        .filter(one -> one.bearing() == Bearing.NEEDS_VET && one.heldBack() == null);
  }
}
