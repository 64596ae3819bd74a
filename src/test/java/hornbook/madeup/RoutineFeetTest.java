package hornbook.madeup;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.fact.Urgency;
import hornbook.rules.Shipped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody rings the vet, and nobody glues or wraps, for what a farrier sees on every round. */
class RoutineFeetTest {
  private static final int EACH = 50;

  @ParameterizedTest
  @ValueSource(ints = {0, EACH, 2 * EACH, 3 * EACH})
  void getThePlainAnswer(int from) {
    for (int number = from; number < from + EACH; number++) {
      RoutineFeet.Routine routine = RoutineFeet.foot(number);
      FootAdvice foot = advise(routine.yaml()).feet().get(0);
      assertThat(foot.referrals())
          .as("%s%n%s", routine.kind(), routine.yaml())
          .allMatch(referral -> referral.urgency() == Urgency.MENTION);
      assertThat(foot.firstChoice().map(one -> one.id()))
          .as("%s%n%s%n%s", routine.kind(), routine.yaml(), foot.findings())
          .contains(routine.shod() ? "nail-on" : "leave-unshod");
    }
  }

  private static Advice advise(String yaml) {
    byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
    ReadResult read = AssessmentReader.read(bytes, "a routine foot", List.of());
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return Shipped.ADVISOR.advise(((ReadResult.Good) read).assessment());
  }
}
