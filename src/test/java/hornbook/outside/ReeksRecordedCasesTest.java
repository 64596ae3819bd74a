package hornbook.outside;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.fact.Urgency;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Thirty horses whose end is known, from the case notes of Reeks, Diseases of the Horse's Foot
 * (1906): shown only what was seen then, the program has to call the vet at least as soon as the
 * case deserves today, and neither now nor today where farriery alone would do.
 */
class ReeksRecordedCasesTest {
  static Stream<RecordedCase> cases() {
    return RecordedCase.in("reeks-1906.yaml");
  }

  @Test
  void allThirtyAreThere() {
    assertThat(cases().map(RecordedCase::id).distinct()).hasSize(30);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theVetIsCalledAsSoonAsTheCaseDeserves(RecordedCase one) {
    Urgency called = one.called().orElse(Urgency.MENTION);
    if (one.least().isPresent()) {
      assertThat(called).isLessThanOrEqualTo(one.least().get());
    } else {
      assertThat(called).isGreaterThan(Urgency.TODAY);
    }
  }
}
