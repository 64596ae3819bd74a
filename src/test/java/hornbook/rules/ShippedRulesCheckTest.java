package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.Condition;
import hornbook.rulebook.read.RulebookReader;
import hornbook.study.coverage.Coverage;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecheck.FiringCheck;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shipped rule base has none of the faults it can be told of, and its cases test all of it. */
class ShippedRulesCheckTest {
  /** The packaged program runs more: this is to find a contradiction before it is packaged. */
  private static final int FEET = 300;

  private static Coverage coverage;

  @BeforeAll
  static void count() throws Exception {
    coverage = Coverage.of(Shipped.BOOK, Shipped.ADVISOR, CaseLibrary.read(Path.of("cases")));
  }

  @Test
  void reads_without_a_fault() throws Exception {
    assertThat(RulebookReader.inspect(Path.of("rules")).faults()).isEmpty();
  }

  @Test
  void fires_without_a_fault_over_its_cases_and_made_up_feet() throws Exception {
    CaseLibrary library = CaseLibrary.read(Path.of("cases"));
    assertThat(FiringCheck.of(Shipped.RULES, library, FEET, 7).faults()).isEmpty();
  }

  @Test
  void every_rule_condition_and_limit_is_put_to_the_test_by_a_case() {
    assertThat(coverage.rules()).hasSameSizeAs(Shipped.BOOK.rules().keySet());
    assertThat(coverage.rules().stream().filter(rule -> !rule.whole())).isEmpty();
    assertThat(coverage.limits().stream().filter(limit -> !limit.whole())).isEmpty();
  }

  /** What never decides alone follows from the rest, and is there because it has to be answered. */
  @Test
  void every_condition_but_cited_findings_is_once_the_only_one_to_fail() {
    assertThat(
            coverage.rules().stream()
                .flatMap(rule -> rule.conditions().stream())
                .filter(seen -> seen.canFail() && seen.alone() == 0)
                .map(seen -> seen.condition().getClass())
                .distinct())
        .allMatch(Condition.OfFinding.class::equals);
  }
}
