package hornbook.outside;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.fact.Urgency;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Feet described by the United States Department of Agriculture's Special Report on Diseases of the
 * Horse (1916): the vet is called at least as soon as such a foot deserves, and not at all for feet
 * that need none.
 */
class UsdaReferralTest {
  static Stream<RecordedCase> feet() {
    return RecordedCase.in("usda-1916-referral.yaml");
  }

  @Test
  void allAreThere() {
    assertThat(feet().map(RecordedCase::id).distinct()).hasSize(24);
  }

  @ParameterizedTest
  @MethodSource("feet")
  void theVetIsCalledAsSoonAsTheFootDeserves(RecordedCase one) {
    Urgency called = one.called().orElse(Urgency.MENTION);
    if (one.least().isPresent()) {
      assertThat(called).isLessThanOrEqualTo(one.least().get());
    } else {
      assertThat(called).isEqualTo(Urgency.MENTION);
    }
  }
}
