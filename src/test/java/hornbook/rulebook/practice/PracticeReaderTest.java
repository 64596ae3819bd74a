package hornbook.rulebook.practice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.tree.Fault;
import hornbook.rulebook.LimitChange;
import hornbook.rulebook.Practice;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.load.ShippedRules;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A local practice is read whole or not at all, and cannot make a foot less safe unseen. */
class PracticeReaderTest {
  private static final Rulebook BOOK = ShippedRules.book();
  private static final String HEAD =
      "format: hornbook-practice/1\nname: Upper Yard\nby: the head farrier\ndate: 2026-03-14\n";

  private final List<Fault> faults = new ArrayList<>();

  private Practice read(String text, boolean acceptLessSafe) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return PracticeReader.read(bytes, "yard.yaml", BOOK, acceptLessSafe, faults);
  }

  private static String moved(String id, Object value) {
    return HEAD + "limits:\n  - {id: " + id + ", value: " + value + ", reason: stony ground}\n";
  }

  @Test
  void a_limit_moved_toward_more_care_needs_no_leave() {
    Practice practice = read(moved("nails.branch.least", 3), false);
    assertThat(faults).isEmpty();
    Limit limit = limit(BOOK.under(practice), "nails.branch.least");
    assertThat(limit.value()).isEqualTo(3);
    assertThat(limit.basis()).isEqualTo(Basis.PRACTICE);
    assertThat(BOOK.under(practice).sources().get(limit.source()).title()).contains("Upper Yard");
  }

  @Test
  void what_was_published_is_published_no_more_once_it_is_moved() {
    Practice practice = read(moved("referral.lame.days", 7), false);
    Limit limit = limit(BOOK.under(practice), "referral.lame.days");
    assertThat(limit.basis().compareTo(Basis.PRACTICE)).isGreaterThanOrEqualTo(0);
  }

  @Test
  void a_limit_moved_toward_less_safety_needs_leave_and_is_marked() {
    assertThat(read(moved("nails.branch.least", 1), false)).isNull();
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).found()).contains("nails.branch.least toward less safety");
    assertThat(faults.get(0).allowed()).contains("from 2 up").contains("--accept-less-safe");
    faults.clear();
    Practice practice = read(moved("nails.branch.least", 1), true);
    assertThat(faults).isEmpty();
    assertThat(practice.changes()).singleElement().matches(LimitChange::lessSafe);
  }

  @Test
  void no_leave_lets_a_limit_that_calls_the_vet_be_moved_to_call_later() {
    Set<String> referring = ReferralLimits.of(BOOK);
    assertThat(referring).contains("referral.fever", "referral.lameness.any", "club.beyond");
    for (Limit limit : BOOK.limits()) {
      if (referring.contains(limit.id())) {
        if (limit.safer() == Limit.Safer.NEITHER) {
          for (double moved : new double[] {-limit.step(), limit.step()}) {
            faults.clear();
            assertThat(read(entry(limit, limit.value() + moved), true)).as(limit.id()).isNull();
          }
          continue;
        }
        double step = limit.safer() == Limit.Safer.UP ? -limit.step() : limit.step();
        faults.clear();
        assertThat(read(entry(limit, limit.value() + step), true)).as(limit.id()).isNull();
        faults.clear();
        double safer = limit.value() - step;
        LimitAmount bounds = new LimitAmount(limit);
        if (safer >= bounds.least() && safer <= bounds.most()) {
          assertThat(read(entry(limit, safer), false)).as(limit.id() + faults).isNotNull();
        }
      }
    }
  }

  private static String entry(Limit limit, double value) {
    String limbs = limit.limbs() == null ? "" : ", limbs: " + word(limit.limbs());
    String age = limit.age() == null ? "" : ", age: " + word(limit.age());
    return moved(limit.id(), LimitAmount.shown(value) + limbs + age);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  @Test
  void values_are_taken_in_the_units_they_are_written_in() {
    Practice practice =
        read(
            HEAD
                + "limits:\n"
                + "  - {id: nails.spacing, value: 1 1/4 in, reason: heavy nails}\n"
                + "  - {id: referral.fever, value: 101 F, reason: the vet here asks for it}\n"
                + "  - {id: referral.lame.days, value: 10 days, reason: far from the clinic}\n"
                + "  - {id: error.length, value: 3 mm, reason: a rule in the dark}\n",
            false);
    assertThat(faults).isEmpty();
    assertThat(practice.changes().stream().map(change -> change.after().value()))
        .containsExactly(31.75, 38.333333333, 10.0, 3.0);
  }

  @Test
  void a_limit_by_limb_and_age_is_moved_where_it_is_meant() {
    Practice practice =
        read(
            HEAD + "limits:\n  - {id: growth.slow, value: 4, age: adult, reason: winter feed}\n",
            false);
    assertThat(faults).isEmpty();
    assertThat(practice.changes())
        .singleElement()
        .matches(change -> change.before().age() == Limit.Age.ADULT);
  }

  @Test
  void all_faults_are_told_at_once_with_their_place_and_the_nearest_word() {
    Practice practice =
        read(
            "format: hornbook-practice/1\n"
                + "name: Upper Yard\n"
                + "date: 14 March\n"
                + "limit: []\n"
                + "limits:\n"
                + "  - {id: nails.branch.leest, value: 3, reason: x}\n"
                + "  - {id: nails.spacing, value: 30 kg, reason: x}\n"
                + "  - {id: referral.sole.least, value: 12 mm}\n"
                + "  - {id: nails.spacing, value: 900 mm, reason: x}\n"
                + "notes:\n"
                + "  - {topic: naling, says: stay off the quarters}\n"
                + "  - {says: about nothing}\n",
            true);
    assertThat(practice).isNull();
    assertThat(faults.stream().map(fault -> fault.line() + " " + fault.path()))
        .containsExactly(
            "1 by",
            "3 date",
            "4 limit",
            "6 limits[0].id",
            "7 limits[1].value",
            "8 limits[2].reason",
            "9 limits[3].value",
            "11 notes[0].topic",
            "12 notes[1].says");
    assertThat(faults.get(2).nearest()).isEqualTo("limits");
    assertThat(faults.get(3).nearest()).isEqualTo("nails.branch.least");
    assertThat(faults.get(7).nearest()).isEqualTo("nailing");
  }

  @Test
  void limits_the_computing_takes_stay_in_order() {
    assertThat(read(moved("wall.toe-end", "70 %"), true)).isNull();
    assertThat(faults)
        .singleElement()
        .matches(fault -> fault.allowed().contains("below wall.side-end, 60 %"));
    faults.clear();
    assertThat(read(moved("outline.heel-width", 100), true)).isNull();
    faults.clear();
    assertThat(read(moved("growth.slow", "12, age: adult"), true)).isNull();
    assertThat(faults).singleElement().matches(fault -> fault.path().equals("limits[0].value"));
  }

  private static Limit limit(Rulebook book, String id) {
    return book.limits().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }
}
