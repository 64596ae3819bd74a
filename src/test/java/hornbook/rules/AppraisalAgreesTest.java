package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.condition.Appraisal;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.Truth;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.study.rulecase.RuleCase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What explains the rules and what fires them never part company. */
class AppraisalAgreesTest {
  @Test
  void on_every_rule_case_and_its_near_miss() throws Exception {
    for (RuleCase one : Shipped.ruleCases().values()) {
      agree(one.assessment(), one.rule());
      agree(one.with(one.nearMiss()), one.rule() + " near miss");
    }
  }

  @Test
  void on_every_exercise() throws Exception {
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      ReadResult read = AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
      assertThat(read).as(file.toString()).isInstanceOf(ReadResult.Good.class);
      agree(((ReadResult.Good) read).assessment(), file.toString());
    }
  }

  private static void agree(Assessment assessment, String what) {
    for (FootAdvice foot : Shipped.ADVISOR.judge(assessment).feet()) {
      Set<String> fired = new TreeSet<>();
      foot.firings().forEach(firing -> fired.add(firing.rule()));
      Set<String> held = new TreeSet<>();
      Map<String, RuleState> states = Appraisal.of(Shipped.BOOK, foot.sheet());
      states.values().stream()
          .filter(state -> state.truth() == Truth.TRUE)
          .forEach(state -> held.add(state.rule().id()));
      assertThat(held).as(what).isEqualTo(fired);
      states.values().stream()
          .filter(state -> state.truth() != Truth.TRUE)
          .forEach(
              state -> assertThat(state.obstacle()).as(what + " " + state.rule().id()).isPresent());
    }
  }
}
