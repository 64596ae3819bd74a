package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.study.rulecase.CaseCheck;
import hornbook.study.rulecase.RuleCase;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every rule has a case that fires it and tells what it concludes, one change that silences it, and
 * brackets for its limits: it turns at each, and would turn elsewhere if the limit moved a step.
 */
class RuleCasesTest {
  @Test
  void every_rule_has_a_case_and_every_case_a_rule() throws Exception {
    var cases = Shipped.ruleCases();
    assertThat(fired(cases)).isEqualTo(Shipped.BOOK.rules().keySet());
    assertThat(cases.keySet()).containsAll(Shipped.BOOK.rules().keySet());
    cases.forEach(
        (name, one) -> {
          assertThat(Shipped.BOOK.rules()).containsKey(one.rule());
          assertThat(name).matches(one.rule() + "(-[a-z-]+)?");
        });
  }

  /** The rules that some case fires; a case of a mistake made once may want its rule silent. */
  private static Set<String> fired(Map<String, RuleCase> cases) {
    return cases.values().stream()
        .filter(one -> !one.expects().silent())
        .map(RuleCase::rule)
        .collect(Collectors.toSet());
  }

  @TestFactory
  Stream<DynamicTest> the_case_does_what_it_is_there_for() throws Exception {
    CaseCheck check = new CaseCheck(Shipped.RULES);
    return Shipped.ruleCases().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey() + " " + one.getValue().title(),
                    () -> assertThat(check.faults(one.getKey(), one.getValue())).isEmpty()));
  }
}
