package hornbook.rulebook.reserve;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Urgency;
import hornbook.rules.Shipped;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What calls for the vet hold back, alone and together: the stricter of two holds. */
class ReservesTest {
  private static Reserves held(Extent extent, Until until, Integer days) {
    return new Reserves(
        List.of("nail-on"), List.of(), Set.of(), Set.of(Move.values()[0]), extent, until, days);
  }

  @Test
  void nothing_adds_nothing() {
    Reserves some = held(Extent.FOOT, Until.DAYS, 3);
    assertThat(some.and(Reserves.NOTHING)).isEqualTo(some);
    assertThat(Reserves.NOTHING.and(some)).isEqualTo(some);
    assertThat(Reserves.NOTHING.movesOfTheHorse()).isEqualTo(Reserves.NOTHING);
  }

  @Test
  void of_two_the_stricter_holds() {
    Reserves days = held(Extent.FOOT, Until.DAYS, 3);
    assertThat(days.and(held(Extent.FOOT, Until.DAYS, 5)).days()).isEqualTo(5);
    assertThat(held(Extent.FOOT, Until.DAYS, 5).and(days).days()).isEqualTo(5);
    Reserves seen = days.and(held(Extent.HORSE, Until.VET_HAS_SEEN, null));
    assertThat(seen.until()).isEqualTo(Until.VET_HAS_SEEN);
    assertThat(seen.days()).isNull();
    assertThat(seen.extent()).isEqualTo(Extent.HORSE);
    assertThat(held(Extent.FOOT, Until.VET_DIRECTS, null).and(seen).until())
        .isEqualTo(Until.VET_DIRECTS);
  }

  @Test
  void both_hold_back_what_either_does_and_each_thing_once() {
    Reserves glue =
        new Reserves(
            List.of("glue-on", "nail-on"),
            List.of("pad"),
            Set.of(Cut.values()[0]),
            Set.of(),
            Extent.FOOT,
            Until.VET_HAS_SEEN,
            null);
    Reserves both = held(Extent.FOOT, Until.VET_HAS_SEEN, null).and(glue);
    assertThat(both.subjects()).containsExactly("nail-on", "glue-on", "pad");
    assertThat(both.cuts()).containsExactly(Cut.values()[0]);
    assertThat(both.moves()).containsExactly(Move.values()[0]);
    assertThat(both.movesOfTheHorse().extent()).isEqualTo(Extent.HORSE);
    assertThat(both.movesOfTheHorse().subjects()).isEmpty();
  }

  @Test
  void a_call_for_now_holds_back_the_whole_horse_and_one_for_today_the_work_on_the_foot() {
    List<String> work =
        Shipped.BOOK.techniques().stream()
            .filter(one -> !one.firstAid())
            .map(NamedOption::id)
            .toList();
    int now = 0;
    int today = 0;
    for (RuleEntry rule : Shipped.BOOK.rules().values()) {
      Reserves reserves = rule.text().reserves();
      if (rule.calls(Urgency.NOW)) {
        assertThat(reserves.techniques()).as(rule.id()).containsAll(work);
        assertThat(reserves.cuts()).as(rule.id()).containsExactly(Cut.values());
        assertThat(reserves.moves()).as(rule.id()).containsExactly(Move.values());
        assertThat(reserves.extent()).as(rule.id()).isEqualTo(Extent.HORSE);
        assertThat(reserves.until()).as(rule.id()).isEqualTo(Until.VET_DIRECTS);
        now++;
      } else if (rule.outcome() instanceof RuleConclusion.Refers refers
          && refers.urgency() == Urgency.TODAY) {
        assertThat(reserves.techniques()).as(rule.id()).containsAll(work);
        assertThat(reserves.until()).as(rule.id()).isNotEqualTo(Until.DAYS);
        today += reserves.extent() == Extent.FOOT ? 1 : 0;
      }
    }
    assertThat(now).isPositive();
    assertThat(today).as("calls for today that hold for the foot alone").isPositive();
  }
}
