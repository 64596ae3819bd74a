package hornbook.advice.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.quantity.Units;
import hornbook.report.advice.AdviceJson;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.RuleCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Held to the engine, with the limit itself moved to the other side of the reading. */
class NearEqualTest {
  private static final double BEYOND = 1e-6;

  @Test
  void theOtherChoiceIsTheOneOfRulesWithTheLimitMoved() throws Exception {
    int near = 0;
    for (Assessment horse : besideLimits()) {
      Advice advice = Shipped.ADVISOR.advise(horse);
      for (FootAdvice foot : advice.feet()) {
        Optional<NearEqual> found = NearEqual.of(advice, foot);
        if (found.isPresent()) {
          near++;
          NearEqual one = found.get();
          assertThat(one.limit().basis()).isEqualTo(Basis.MEMORY);
          Advisor across = new Advisor(Shipped.RULES.under(Shipped.BOOK.withLimits(moved(one))));
          FootAdvice then = across.judge(horse).feet().get(foot.index());
          assertThat(then.firstChoice().map(OptionAdvice::id).orElse(null)).isEqualTo(one.other());
          assertThat(foot.firstChoice().map(OptionAdvice::id)).contains(one.chosen());
          told(advice);
        }
      }
    }
    assertThat(near).isPositive();
  }

  private static void told(Advice advice) {
    for (Detail detail : Detail.values()) {
      TextOptions options = new TextOptions(Units.MM, detail, false, TextOptions.USUAL_WIDTH);
      assertThat(AdviceText.render(advice, options)).containsIgnoringCase("close: ");
    }
    assertThat(AdviceMarkdown.render(advice, Units.MM)).contains("**Close:** ");
    assertThat(AdviceJson.line(advice, Units.MM)).contains("\"nearEqual\":{\"other\":");
  }

  /** The cases of the rules, under, at and over each limit from memory. */
  private static List<Assessment> besideLimits() throws Exception {
    List<Assessment> horses = new ArrayList<>();
    for (RuleCase one : Shipped.ruleCases().values()) {
      horses.add(one.assessment());
      for (String id : one.limits().keySet()) {
        boolean memory =
            Shipped.BOOK.limits().stream()
                .anyMatch(limit -> limit.id().equals(id) && limit.basis() == Basis.MEMORY);
        for (RuleCase.Bracket bracket :
            memory ? one.limits().get(id) : List.<RuleCase.Bracket>of()) {
          for (String value : bracket.values()) {
            horses.add(one.with(bracket.changes(value)));
          }
        }
      }
    }
    return horses;
  }

  private static List<Limit> moved(NearEqual near) {
    double at = near.reading().low();
    boolean up = near.limit().allows(at) == (near.limit().direction() == Limit.Direction.AT_LEAST);
    List<Limit> limits = new ArrayList<>(Shipped.BOOK.limits());
    limits.replaceAll(
        other ->
            other.equals(near.limit()) ? other.withValue(up ? at + BEYOND : at - BEYOND) : other);
    return limits;
  }
}
