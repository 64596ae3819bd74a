package hornbook.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.fact.Bearing;
import hornbook.rules.Shipped;
import hornbook.study.Given;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What waits on a foot for a call on another says which foot calls, and for what. */
class OtherFootTest {
  @Test
  void a_reason_names_the_foot_and_the_call() {
    FootAdvice other = Shipped.ADVISOR.advise(Given.exercise("one-hot-foot")).feet().get(1);
    assertThat(other.sheet().held()).isNotEmpty();
    List<ReasonGiven> reasons =
        other.techniques().stream()
            .flatMap(one -> one.reasons().stream())
            .filter(one -> one.heldBack() != null && one.heldBack().from() != null)
            .toList();
    assertThat(reasons)
        .isNotEmpty()
        .allSatisfy(
            one -> {
              String title = Shipped.BOOK.rules().get(one.rule()).title();
              String call = title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
              assertThat(one.bearing()).isEqualTo(Bearing.NEEDS_VET);
              assertThat(one.says().template())
                  .isEqualTo("The left fore foot calls the vet: " + call + ".");
            });
  }
}
