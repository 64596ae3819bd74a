package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advisor;
import hornbook.rulebook.Condition;
import hornbook.rulebook.LoadedRules;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.RuleCase;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every rule has a case that fires it, one change that silences it, and brackets for its limits.
 */
class RuleCasesTest {
  @Test
  void every_rule_has_a_case_and_every_case_a_rule() throws Exception {
    var cases = Shipped.ruleCases();
    assertThat(cases.keySet()).isEqualTo(Shipped.BOOK.rules().keySet());
    cases.forEach((name, one) -> assertThat(one.rule()).isEqualTo(name));
  }

  @TestFactory
  Stream<DynamicTest> the_case_fires_and_its_near_miss_does_not() throws Exception {
    return Shipped.ruleCases().values().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.rule() + " " + one.title(),
                    () -> {
                      assertThat(fires(Shipped.ADVISOR, one)).as("fires").isTrue();
                      assertThat(fires(Shipped.ADVISOR, one, one.nearMiss()))
                          .as("fires after " + one.nearMiss())
                          .isFalse();
                      for (String change : one.silent()) {
                        assertThat(fires(Shipped.ADVISOR, one, change))
                            .as("fires after " + change)
                            .isFalse();
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> the_rule_turns_at_its_limits() throws Exception {
    return Shipped.ruleCases().values().stream()
        .filter(one -> Shipped.BOOK.rules().containsKey(one.rule()))
        .flatMap(
            one ->
                Shipped.BOOK
                    .rules()
                    .get(one.rule())
                    .limits()
                    .map(
                        limit ->
                            DynamicTest.dynamicTest(
                                one.rule() + " at " + limit, () -> turns(one, limit))));
  }

  private static void turns(RuleCase one, String limit) throws Exception {
    List<RuleCase.Bracket> brackets = one.limits().get(limit);
    assertThat(brackets).as("a bracket for " + limit + " in " + one.file()).isNotEmpty();
    RuleEntry rule = Shipped.BOOK.rules().get(one.rule());
    boolean satisfies = rule.conditions().stream().anyMatch(c -> asks(rule, c, limit, true));
    boolean misses = rule.conditions().stream().anyMatch(c -> asks(rule, c, limit, false));
    assertThat(satisfies || misses).as(limit + " is held against a reading").isTrue();
    for (RuleCase.Bracket bracket : brackets) {
      List<Boolean> outcomes = outcomes(Shipped.ADVISOR, one, bracket);
      assertThat(outcomes).as("under, at, over").contains(true).contains(false);
      Limit own = held(one, bracket, limit);
      assertThat(outcomes(moved(own, own.step()), one, bracket))
          .as("with " + limit + " one step up")
          .isNotEqualTo(outcomes);
      assertThat(outcomes(moved(own, -own.step()), one, bracket))
          .as("with " + limit + " one step down")
          .isNotEqualTo(outcomes);
    }
  }

  private static boolean asks(
      RuleEntry rule, Condition condition, String limit, boolean satisfies) {
    return condition instanceof Condition.OfReading reading
        && reading.satisfies() == satisfies
        && rule.limitBoundTo(reading.limit()).equals(limit);
  }

  private static Limit held(RuleCase one, RuleCase.Bracket bracket, String limit) throws Exception {
    return Shipped.ADVISOR
        .judge(one.with(bracket.changes(bracket.at())))
        .feet()
        .get(one.foot())
        .sheet()
        .limits()
        .get(limit);
  }

  private static Advisor moved(Limit limit, double by) {
    Rulebook book = Shipped.BOOK;
    List<Limit> limits = new ArrayList<>(book.limits());
    limits.replaceAll(other -> other == limit ? limit.withValue(limit.value() + by) : other);
    return new Advisor(new LoadedRules(book.withLimits(limits), Shipped.RULES.rules()));
  }

  private static List<Boolean> outcomes(Advisor advisor, RuleCase one, RuleCase.Bracket bracket)
      throws Exception {
    List<Boolean> outcomes = new ArrayList<>();
    for (String value : bracket.values()) {
      outcomes.add(fires(advisor, one, bracket.changes(value)));
    }
    return outcomes;
  }

  private static boolean fires(Advisor advisor, RuleCase one, String... changes) throws Exception {
    return Shipped.fired(advisor, one.with(changes), one.foot()).contains(one.rule());
  }
}
