package hornbook.advice.engine;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FiredRule;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import hornbook.rules.Shipped;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Firings stand in an order that does not hang on the order they came in. */
class FiringOrderTest {
  private static final Seen YES = new Seen("damp", "yes", "feet[0].wall[0].damp");

  private static Crack crack(String field) {
    return new Crack("toe", null, "ground", null, null, null, null, null, field);
  }

  private static Stretch stretch(String field) {
    return new Stretch("medial", "sound", null, null, null, 0, 50, field);
  }

  private static List<CitedFact> limits() {
    return Shipped.BOOK.limits().stream()
        .filter(one -> one.id().matches("nails\\.branch\\.least|error\\.length"))
        .sorted(Comparator.comparing(Limit::id))
        .map(CitedFact.class::cast)
        .limit(2)
        .toList();
  }

  /** Two facts of each kind, the first of which comes first. */
  static List<List<CitedFact>> twoOfAKind() {
    return List.of(
        List.of(new Seen("a", "no", "feet[0].a"), new Seen("a", "no", "feet[0].b")),
        List.of(new Seen("a", "no", "feet[0].a"), new Seen("a", "yes", "feet[0].a")),
        List.of(new Reading("heelLength", 30, List.of()), new Reading("toeLength", 80, List.of())),
        List.of(crack("feet[0].cracks[0]"), crack("feet[0].cracks[1]")),
        List.of(stretch("feet[0].wall[0]"), stretch("feet[0].wall[1]")),
        limits(),
        List.of(Finding.of("long-toe", YES), Finding.of("low-heels", YES)),
        List.of(
            Finding.of("low-heels", crack("feet[0].cracks[0]")),
            Finding.of("low-heels", crack("feet[0].cracks[1]"))));
  }

  @ParameterizedTest
  @MethodSource("twoOfAKind")
  void firings_of_one_rule_go_by_what_they_rest_on(List<CitedFact> two) {
    FiredRule first = new FiredRule("S001", Finding.of("x", YES, two.get(0)));
    FiredRule second = new FiredRule("S001", Finding.of("x", YES, two.get(1)));
    assertThat(new FiringOrder().compare(first, second)).isNegative();
    assertThat(new FiringOrder().compare(second, first)).isPositive();
    assertThat(new FiringOrder().compare(first, first)).isZero();
  }

  @Test
  void the_rule_goes_before_what_it_rests_on() {
    FiredRule first = new FiredRule("S001", Finding.of("x", stretch("feet[0].wall[9]")));
    FiredRule second = new FiredRule("S002", Finding.of("x", stretch("feet[0].wall[0]")));
    assertThat(new FiringOrder().compare(first, second)).isNegative();
  }
}
