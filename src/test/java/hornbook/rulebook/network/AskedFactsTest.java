package hornbook.rulebook.network;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import hornbook.rules.Shipped;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The engine is handed what rules ask for, and of rows that say the same the first. */
class AskedFactsTest {
  private static final AskedFacts ASKED = new AskedFacts(Shipped.BOOK.rules().values());

  private static Stretch separated(String side, int row) {
    return new Stretch(
        side, "separated", "yes", null, null, 10 * row, 10 * row + 5, "feet[0].wall[" + row + "]");
  }

  @Test
  void one_of_two_rows_alike_is_left_the_first_by_its_place() {
    Stretch first = separated("medial", 0);
    Stretch second = separated("medial", 1);
    Stretch other = separated("lateral", 2);
    assertThat(ASKED.among(List.of(first, second, other))).containsExactlyInAnyOrder(first, other);
    assertThat(ASKED.among(List.of(other, second, first))).containsExactlyInAnyOrder(first, other);
  }

  @Test
  void what_no_rule_asks_for_is_left_out() {
    CitedFact asked = new Seen("digitalPulse", "bounding", "feet[0].signs.digitalPulse");
    CitedFact number = new Reading("lameness", 2, List.of("feet[0].lameness"));
    assertThat(
            ASKED.among(
                List.of(
                    new Seen("digitalPulse", "green", "feet[0].signs.digitalPulse"),
                    asked,
                    new Seen("colourOfTheMane", "yes", "horse.mane"),
                    number,
                    new Reading("lengthOfTheMane", 80, List.of("horse.mane")))))
        .containsExactlyInAnyOrder(asked, number);
  }
}
