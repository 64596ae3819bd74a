package hornbook.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rules.Shipped;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a check takes a rule to ask of a number is what the number is held against. */
class RangeTest {
  @Test
  void the_range_on_either_side_of_a_limit_holds_just_the_readings_on_that_side() {
    for (Limit limit : Shipped.BOOK.limits()) {
      for (double off : new double[] {-limit.step(), 0, limit.step()}) {
        double value = limit.value() + off;
        Reading reading = new Reading("any", value, List.of());
        assertThat(Range.between(value, value).within(Range.of(limit, true)))
            .as(limit.id() + " satisfied by " + value)
            .isEqualTo(reading.satisfies(limit));
        assertThat(Range.between(value, value).within(Range.of(limit, false)))
            .as(limit.id() + " missed by " + value)
            .isEqualTo(reading.misses(limit));
      }
    }
  }
}
