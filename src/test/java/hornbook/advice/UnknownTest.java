package hornbook.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.AnyAssessment;
import hornbook.assessment.Assessment;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Urgency;
import hornbook.rules.Shipped;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Unknown is never taken for no: what is left out silences rules, wakes none, and is asked for. */
class UnknownTest {
  /**
   * Leaving these out changes what is assumed, and the advice says so: a horse of no known age is
   * held to be grown, a weight not measured is estimated, an outline not measured is drawn from the
   * usual shape.
   */
  private static final Set<String> ASSUMED =
      Set.of("ageYears", "ageDays", "weight", "toeToWidest", "bearingLength", "width");

  /**
   * Calls for the vet that stand while something was not looked at: pus seen to drain makes a
   * sudden ease less urgent, lameness looked at takes the place of fever alone, and what a vet has
   * judged lately is not called in again.
   */
  private static final Set<String> CALL_FOR_WANT_OF_A_LOOK =
      Stream.concat(
              Stream.of("R009", "R115"),
              Shipped.BOOK.rules().values().stream()
                  .filter(UnknownTest::callsUnlessJudged)
                  .map(RuleEntry::id))
          .collect(Collectors.toUnmodifiableSet());

  private static boolean callsUnlessJudged(RuleEntry rule) {
    return rule.calls(Urgency.MENTION)
        && rule.conditions().stream()
            .anyMatch(
                one ->
                    one instanceof Condition.OfSeen seen
                        && seen.what().startsWith("judged")
                        && seen.word().passes("no"));
  }

  @Test
  void leaving_out_a_field_wakes_no_rule_and_is_asked_for() throws Exception {
    int silenced = 0;
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      Assessment whole = read(file);
      Advice all = Shipped.ADVISOR.judge(whole);
      List<Set<String>> before = fired(all);
      for (FieldValue field : removable(whole)) {
        Assessment less = AssessmentEdit.of(field.path()).with(whole, null);
        Advice advice = Shipped.ADVISOR.advise(less);
        List<Set<String>> after = fired(advice);
        for (int foot = 0; foot < before.size(); foot++) {
          String what = file + " without " + field.path();
          if (field.path().endsWith(".height")) {
            // How high a loss is tells whether the trim takes it; not known, it counts as lost.
            assertThat(call(advice.feet().get(foot)))
                .as(what)
                .isLessThanOrEqualTo(call(all.feet().get(foot)));
          } else {
            Set<String> woken = new TreeSet<>(after.get(foot));
            woken.removeAll(CALL_FOR_WANT_OF_A_LOOK);
            assertThat(before.get(foot)).as(what).containsAll(woken);
          }
          Set<String> gone = new TreeSet<>(before.get(foot));
          gone.removeAll(after.get(foot));
          gone.removeIf(rule -> onlyFinds(rule));
          if (!gone.isEmpty()) {
            silenced++;
            assertThat(asked(advice.feet().get(foot)))
                .as(what + " silences " + gone)
                .anyMatch(path -> same(path, field.path(), less));
          }
        }
      }
    }
    assertThat(silenced).isGreaterThan(500);
  }

  @Test
  void what_the_trim_takes_is_asked_where_damage_is_low_enough_to_go_with_it() throws Exception {
    Path low = Shipped.EXERCISES.resolve("crumbling-edge-before-the-trim.yaml");
    String toTrim = "feet[0].measures.toTrim";
    Assessment unsaid = AssessmentEdit.of(toTrim).with(read(low), null);
    Assessment high = unsaid;
    for (int row = 0; row < 2; row++) {
      high = AssessmentEdit.of("feet[0].wall[" + row + "].height").with(high, 25.0);
    }
    assertThat(asked(Shipped.ADVISOR.advise(unsaid).feet().get(0))).contains(toTrim);
    assertThat(asked(Shipped.ADVISOR.advise(high).feet().get(0))).doesNotContain(toTrim);
  }

  /** How soon the vet is called, the soonest least. */
  private static int call(FootAdvice foot) {
    return foot.urgency().map(Enum::ordinal).orElse(Integer.MAX_VALUE);
  }

  @Property(tries = 300)
  void any_assessment_is_advised_on_and_never_has_two_first_choices(
      @ForAll("assessments") Assessment any) {
    for (FootAdvice foot : Shipped.ADVISOR.advise(any).feet()) {
      assertThat(foot.techniques()).hasSameSizeAs(Shipped.BOOK.techniques());
      assertThat(foot.supports()).hasSameSizeAs(Shipped.BOOK.supports());
      long first =
          foot.techniques().stream().filter(one -> one.verdict() == Verdict.FIRST_CHOICE).count();
      assertThat(first).isLessThanOrEqualTo(1);
      if (foot.urgency().filter(urgency -> urgency.word().equals("now")).isPresent()) {
        assertThat(first).isZero();
      }
    }
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return AnyAssessment.valid();
  }

  private static boolean onlyFinds(String rule) {
    return Shipped.BOOK.rules().get(rule).outcome()
        instanceof hornbook.rulebook.RuleConclusion.Finds;
  }

  private static List<FieldValue> removable(Assessment whole) {
    return Fields.values(whole)
        .filter(field -> field.value() != null && !field.field().required())
        .filter(field -> !ASSUMED.contains(field.field().name()))
        .toList();
  }

  /** A question about the pair names its foot, or the other foot's place in the file. */
  private static boolean same(String asked, String field, Assessment assessment) {
    if (asked.equals(field) || field.startsWith(asked + "[") || asked.startsWith(field + "[")) {
      return true;
    }
    for (int foot = 0; foot < assessment.feet().size(); foot++) {
      String named = "feet[" + assessment.feet().get(foot).limb().word() + "]";
      if (asked.replace(named, "feet[" + foot + "]").equals(field)) {
        return true;
      }
    }
    return false;
  }

  private static List<String> asked(FootAdvice foot) {
    return foot.questions().stream().map(Question::field).toList();
  }

  private static List<Set<String>> fired(Advice advice) {
    List<Set<String>> fired = new ArrayList<>();
    for (FootAdvice foot : advice.feet()) {
      Set<String> rules = new TreeSet<>();
      foot.firings().forEach(firing -> rules.add(firing.rule()));
      fired.add(rules);
    }
    return fired;
  }

  private static Assessment read(Path file) throws Exception {
    ReadResult read = AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
    assertThat(read).as(file.toString()).isInstanceOf(ReadResult.Good.class);
    return ((ReadResult.Good) read).assessment();
  }
}
