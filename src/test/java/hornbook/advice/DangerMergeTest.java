package hornbook.advice;

import static hornbook.rulebook.fact.Urgency.DAYS;
import static hornbook.rulebook.fact.Urgency.NOW;
import static hornbook.rulebook.fact.Urgency.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.Shown;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class DangerMergeTest {
  private static final CitedFact FACT = new Seen("onset", "sudden", "feet[0].onset");

  @Test
  void oneDangerIsToldOnceAtItsMostUrgent() {
    assertThat(told(given("lameness", DAYS, "R3", 2), given("lameness", TODAY, "R9", 1)))
        .containsExactly("R9");
  }

  @Test
  void ofEqualsTheOneThatRestsOnMostIsTold() {
    assertThat(told(given("nail", DAYS, "R1", 2), given("nail", DAYS, "R2", 3)))
        .containsExactly("R2");
  }

  @Test
  void otherDangersStandBesideItTheMostUrgentFirst() {
    assertThat(
            told(
                given("thin-sole", DAYS, "R1", 1),
                given("colic", NOW, "R8", 1),
                given("abscess", DAYS, "R0", 1)))
        .containsExactly("R8", "R0", "R1");
  }

  private static List<String> told(ReferralGiven... given) {
    return DangerMerge.toldOnce(List.of(given)).stream().map(ReferralGiven::rule).toList();
  }

  private static ReferralGiven given(String id, Urgency urgency, String rule, int facts) {
    return new ReferralGiven(
        id,
        urgency,
        null,
        null,
        Reserves.NOTHING,
        rule,
        Collections.nCopies(facts, FACT),
        List.of(),
        Basis.PRACTICE,
        Shown.ALWAYS);
  }
}
