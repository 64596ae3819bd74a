package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.rulebook.fact.Basis;
import hornbook.study.rulecase.RuleCase;
import org.junit.jupiter.api.Test;

/** A reason stands no better than the weakest number it rests on, however far down. */
class GroundOfReasonsTest {
  private static Basis basis(String rule, String technique) throws Exception {
    RuleCase one = Shipped.ruleCases().get(rule);
    FootAdvice foot = Shipped.ADVISOR.advise(one.assessment()).feet().get(one.foot());
    return foot.technique(technique).reasons().stream()
        .filter(reason -> reason.rule().equals(rule))
        .map(ReasonGiven::basis)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_published_rule_on_a_finding_from_a_remembered_limit_is_memory() throws Exception {
    assertThat(Shipped.BOOK.rules().get("P004").basis()).isEqualTo(Basis.PUBLISHED);
    assertThat(basis("P004", "prosthetic-wall")).isEqualTo(Basis.MEMORY);
  }

  @Test
  void a_published_rule_on_a_sign_alone_stays_published() throws Exception {
    assertThat(basis("N021", "nail-on")).isEqualTo(Basis.PUBLISHED);
  }

  @Test
  void a_published_rule_on_a_limit_of_practice_is_practice() throws Exception {
    assertThat(basis("N006", "nail-on")).isEqualTo(Basis.PRACTICE);
  }
}
