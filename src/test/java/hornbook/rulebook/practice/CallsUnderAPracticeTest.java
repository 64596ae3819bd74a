package hornbook.rulebook.practice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.ReferralGiven;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.tree.Fault;
import hornbook.rulebook.Practice;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.RuleCase;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** No practice that is taken without leave makes a call for the vet go away. */
class CallsUnderAPracticeTest {
  private static List<Fault> faults(String limits, boolean accept) {
    List<Fault> faults = new ArrayList<>();
    read(limits, accept, faults);
    return faults;
  }

  private static Practice read(String limits, boolean accept, List<Fault> faults) {
    String file =
        "format: hornbook-practice/1\nname: y\nby: y\ndate: 2026-03-14\nlimits:\n" + limits;
    byte[] bytes = file.getBytes(StandardCharsets.UTF_8);
    return PracticeReader.read(bytes, "y", Shipped.BOOK, accept, faults);
  }

  private static String move(String id, double value) {
    String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return "  - {id: " + id + ", value: " + number + ", reason: r}\n";
  }

  /** Narrow heels make a long edge, of which the same loss is a smaller share. */
  @Test
  void whatTheShapeOfTheFootAssumesCannotTakeACallAway() {
    for (boolean accept : new boolean[] {false, true}) {
      assertThat(faults(move("outline.heel-width", 20), accept))
          .singleElement()
          .asString()
          .contains("sooner, never later");
      assertThat(faults(move("outline.fore-widest", 45), accept))
          .singleElement()
          .asString()
          .contains("measure the foot instead");
      assertThat(faults(move("trim.usual", 12), accept)).isNotEmpty();
      assertThat(faults(move("loss.tall", 30), accept)).isNotEmpty();
    }
    assertThat(faults(move("outline.heel-width", 70), false)).isEmpty();
  }

  @Test
  void everyMoveThatIsTakenKeepsEveryCall() throws Exception {
    List<RuleCase> cases =
        Shipped.ruleCases().values().stream().filter(one -> one.rule().startsWith("R")).toList();
    Map<RuleCase, Set<String>> usual = new IdentityHashMap<>();
    cases.forEach(one -> usual.put(one, calls(Shipped.ADVISOR.judge(one.assessment()))));
    Set<String> computing = new TreeSet<>();
    int taken = 0;
    for (Limit limit : Shipped.BOOK.limits()) {
      if (!limit.computing() || !computing.add(limit.id())) {
        continue;
      }
      for (int steps : new int[] {-4, 4}) {
        List<Fault> faults = new ArrayList<>();
        double value = limit.value() + steps * limit.step();
        Practice practice = read(move(limit.id(), value), false, faults);
        if (practice != null && faults.isEmpty()) {
          taken++;
          Advisor under = new Advisor(Shipped.RULES.under(Shipped.BOOK.under(practice)));
          for (RuleCase one : cases) {
            assertThat(calls(under.judge(one.assessment())))
                .as("%s to %s on %s", limit.id(), value, one.rule())
                .containsAll(usual.get(one));
          }
        }
      }
    }
    assertThat(taken).isPositive();
  }

  private static Set<String> calls(Advice advice) {
    Set<String> calls = new TreeSet<>();
    advice
        .feet()
        .forEach(foot -> foot.referrals().stream().map(ReferralGiven::id).forEach(calls::add));
    return calls;
  }
}
