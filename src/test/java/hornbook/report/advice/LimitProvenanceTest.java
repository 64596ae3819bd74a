package hornbook.report.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LimitProvenanceTest {
  private static final Map<String, Limit> LIMITS =
      Shipped.BOOK.limits().stream()
          .filter(limit -> limit.limbs() != Limit.Limbs.HIND && limit.age() != Limit.Age.FOAL)
          .collect(Collectors.toMap(Limit::id, Function.identity()));

  @Test
  void names_only_limits_there_are() {
    for (ReadingKind kind : ReadingKind.values()) {
      assertThat(LimitProvenance.behind(kind.id()))
          .as(kind.id())
          .allSatisfy(
              start -> assertThat(LIMITS.keySet()).anyMatch(limit -> limit.startsWith(start)));
    }
  }

  @Test
  void a_number_is_no_better_founded_than_what_it_was_computed_with() {
    assertThat(LimitProvenance.of("nail-sites-medial", LIMITS)).isEqualTo(Basis.MEMORY);
    assertThat(LimitProvenance.of("weeks-to-nailable", LIMITS)).isEqualTo(Basis.PUBLISHED);
    assertThat(LimitProvenance.of("toe-heel-angle-difference", LIMITS)).isEqualTo(Basis.PUBLISHED);
    assertThat(LimitProvenance.of("toeLength", LIMITS)).isEqualTo(Basis.PUBLISHED);
  }
}
