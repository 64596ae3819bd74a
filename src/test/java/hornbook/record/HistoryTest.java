package hornbook.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.record.DefectGrowth.Course;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lungwitz and Adams 1913: hoof grows about a third of an inch a month, from a sixth to half an
 * inch; here 4.2, 8.5 and 12.7 mm. A month is 30.4375 days.
 */
class HistoryTest {
  private static FootHistory history(Entry... entries) {
    History history = History.of("Tansy", List.of(entries), Set.of(), null);
    assertThat(history.feet()).hasSize(1);
    return history.feet().get(0);
  }

  private static DefectGrowth growth(Entry... entries) {
    return history(entries).steps().get(0).defects().get(0);
  }

  /** In 42 days 42 / 30.4375 = 1.3799 months: 5.80 mm slow, 17.52 mm fast; from 30 mm. */
  @Test
  void the_forecast_is_what_growth_leaves_of_the_height() {
    DefectGrowth growth =
        growth(
            Entries.visit(1, "2026-04-18", "30 mm", ""),
            Entries.visit(2, "2026-05-30", "20 mm", ""));
    assertThat(growth.low()).isCloseTo(30 - 17.52, within(0.01));
    assertThat(growth.high()).isCloseTo(30 - 5.80, within(0.01));
    assertThat(growth.course()).isEqualTo(Course.AS_FORECAST);
  }

  /** Two millimetres of measuring error on either side of 12.48 to 24.20 mm. */
  @ParameterizedTest
  @CsvSource({
    "10.4, FASTER",
    "10.6, AS_FORECAST",
    "26.1, AS_FORECAST",
    "26.3, SLOWER",
    "31.9, SLOWER",
    "32.1, CLIMBED"
  })
  void what_was_found_is_held_to_it_within_measuring_error(String height, Course course) {
    assertThat(
            growth(
                    Entries.visit(1, "2026-04-18", "30 mm", ""),
                    Entries.visit(2, "2026-05-30", height + " mm", ""))
                .course())
        .isEqualTo(course);
  }

  /** Ten millimetres of toe left on stand under the defect too: 24.20 + 10. */
  @Test
  void a_longer_foot_widens_the_forecast() {
    Entry longer =
        Entries.of(
            Entries.visit(2, "2026-05-30", "33 mm", "")
                .content()
                .toString()
                .replace("90 mm", "100 mm"));
    DefectGrowth growth = growth(Entries.visit(1, "2026-04-18", "30 mm", ""), longer);
    assertThat(growth.high()).isCloseTo(34.20, within(0.01));
    assertThat(growth.low()).isCloseTo(12.48, within(0.01));
    assertThat(growth.course()).isEqualTo(Course.AS_FORECAST);
  }

  @Test
  void a_defect_no_longer_there_has_grown_out_only_if_it_can_have() {
    Entry sound =
        Entries.of(
            Entries.visit(2, "2026-05-30", "0 mm", "")
                .content()
                .toString()
                .replace("broken-away", "sound"));
    assertThat(growth(Entries.visit(1, "2026-04-18", "15 mm", ""), sound).course())
        .isEqualTo(Course.GROWN_OUT);
    assertThat(growth(Entries.visit(1, "2026-04-18", "30 mm", ""), sound).course())
        .isEqualTo(Course.GONE_EARLY);
    Entry unmapped =
        Entries.of(
            Entries.visit(2, "2026-05-30", "0 mm", "")
                .content()
                .toString()
                .replace("\"lateral\"", "\"medial\""));
    assertThat(growth(Entries.visit(1, "2026-04-18", "15 mm", ""), unmapped).course())
        .as("not looked at is not grown out")
        .isEqualTo(Course.NOT_MEASURED);
    assertThat(
            history(Entries.visit(1, "2026-04-18", "15 mm", ""), unmapped).steps().get(0).fresh())
        .hasSize(1);
  }

  @Test
  void shoe_and_lameness_are_those_of_the_later_visit() {
    VisitStep step =
        history(
                Entries.visit(1, "2026-04-18", "30 mm", ", 'lameness': 2"),
                Entries.visit(2, "2026-05-30", "20 mm", ", 'lameness': 1, 'lostShoe': false"))
            .steps()
            .get(0);
    assertThat(step.days()).isEqualTo(42);
    assertThat(step.stayedOn()).isTrue();
    assertThat(step.before().foot().lameness()).isEqualTo(2);
    assertThat(step.after().foot().lameness()).isEqualTo(1);
    VisitStep unknown =
        history(
                Entries.visit(1, "2026-04-18", "30 mm", ""),
                Entries.visit(2, "2026-05-30", "20 mm", ""))
            .steps()
            .get(0);
    assertThat(unknown.stayedOn()).isNull();
  }

  /** The order is that of the visits; what is put right later does not count. */
  @Test
  void visits_stand_in_the_order_of_their_days_and_corrections_replace() {
    List<Entry> entries =
        List.of(
            Entries.visit(1, "2026-05-30", "20 mm", ""),
            Entries.visit(2, "2026-04-18", "99 mm", ""),
            Entries.visit(3, "2026-04-18", "30 mm", ""));
    FootHistory foot = History.of("Tansy", entries, Set.of(2), null).feet().get(0);
    assertThat(foot.visits()).extracting(one -> one.entry().number()).containsExactly(3, 1);
    assertThat(foot.visits().get(0).tallestDefect()).isEqualTo(30);
  }

  @Test
  void what_can_no_longer_be_read_is_named() {
    Entry odd = Entries.of("{'number': 7, 'assessment': {'format': 'something-else/9'}}");
    History history = History.of("Tansy", List.of(odd), Set.of(), null);
    assertThat(history.feet()).isEmpty();
    assertThat(history.unread()).containsExactly(7);
  }
}
