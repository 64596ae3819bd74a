package hornbook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeparturesTest {
  private static final String FOOT =
      """
      {'feet': [{'limb': 'left-fore', 'firstChoice': %s, 'referrals': [%s], 'techniques': [
        {'technique': 'glue-on', 'verdict': '%s', 'reasons': []},
        {'technique': 'leave-unshod', 'verdict': 'workable', 'reasons': []},
        {'technique': 'cast-wrap', 'verdict': 'not-indicated', 'reasons': []},
        {'technique': 'nail-on-adapted', 'verdict': 'with-vet', 'reasons': []},
        {'technique': 'nail-on', 'verdict': 'ruled-out', 'reasons': [
          {'bearing': 'rules-out', 'rule': 'R002', 'says': 'A nail is in the foot.'}]}]}]}
      """;
  private static final String CALL =
      """
      {'urgency': 'now', 'rule': 'R002', 'says': 'A nail is in the foot.',
       'meanwhile': 'Leave it in.', 'reserves': {'techniques': ['nail-on-adapted']}}
      """;

  private static List<Departure> of(boolean first, String calls, boolean directs, String chosen) {
    String advice =
        FOOT.formatted(first ? "'glue-on'" : "null", calls, first ? "first-choice" : "with-vet");
    return new Departures(Entries.json(advice), directs, id -> id).of(Map.of("left-fore", chosen));
  }

  /** With a first choice, all else departs; without one, what is not open does. */
  @ParameterizedTest
  @CsvSource({
    "true, glue-on, false",
    "true, leave-unshod, true",
    "true, nail-on, true",
    "true, cast-wrap, true",
    "true, nail-on-adapted, true",
    "true, none, true",
    "false, leave-unshod, false",
    "false, none, false",
    "false, glue-on, true",
    "false, cast-wrap, true",
    "false, nail-on, true"
  })
  void what_is_not_the_advice_departs(boolean first, String chosen, boolean departs) {
    assertThat(of(first, "", false, chosen)).hasSize(departs ? 1 : 0);
  }

  @Test
  void what_is_left_to_the_vet_may_be_done_once_the_vet_directs() {
    assertThat(of(false, "", false, "glue-on")).hasSize(1);
    assertThat(of(false, "", true, "glue-on")).isEmpty();
    assertThat(of(false, "", true, "nail-on")).as("ruled out all the same").hasSize(1);
  }

  @Test
  void what_a_call_for_the_vet_forbids_is_told_with_what_to_do() {
    Departure ruledOut = of(false, CALL, false, "nail-on").get(0);
    assertThat(ruledOut.forbidden())
        .containsExactly("VET NOW [R002]: A nail is in the foot. Until then: Leave it in.");
    assertThat(ruledOut.says())
        .isEqualTo("The advice rules out nail-on: A nail is in the foot. [R002]");
    assertThat(of(false, CALL, false, "nail-on-adapted").get(0).forbidden())
        .as("what it reserves")
        .hasSize(1);
    assertThat(of(false, CALL, false, "cast-wrap").get(0).forbidden()).isEmpty();
  }

  @Test
  void a_foot_on_which_nothing_was_chosen_does_not_count() {
    String advice = FOOT.formatted("'glue-on'", "", "first-choice");
    Departures departures = new Departures(Entries.json(advice), false, id -> id);
    assertThat(departures.of(Map.of("right-fore", "nail-on"))).isEmpty();
  }

  @Test
  void it_is_kept_as_it_was_worked_out() {
    Departure one = of(false, CALL, false, "nail-on").get(0);
    assertThat(Departure.of(one.node())).isEqualTo(one);
  }
}
