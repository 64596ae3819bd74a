package hornbook.study.marking;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.study.critique.CaseKey;
import hornbook.study.exercise.Answers;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.LearnerAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The case to teach next rests on what most learners missed, and not on what one of them did. */
class NextCasesTest {
  private static final String JUMPER = "showjumper-torn-side";

  private static List<NextCases.Next> after(String name, int wrong, UnaryOperator<FootAnswer> how) {
    CaseKey key = Lessons.KEYS.get(name);
    FootAnswer model = key.feet().values().iterator().next().model();
    List<ClassMarks.Row> rows = new ArrayList<>();
    for (int learner = 0; learner < 20; learner++) {
      FootAnswer own = learner < wrong ? how.apply(model) : model;
      LearnerAnswer answer = Lessons.answer(key, own);
      rows.add(new ClassMarks.Row("" + learner, "x", Lessons.marks(key, answer), List.of()));
    }
    return NextCases.after(
        new ClassMarks(key, Lessons.SCHEME, rows, null),
        Lessons.CASES.get(name),
        List.copyOf(Lessons.CASES.values()),
        one -> Lessons.KEYS.get(one.name()));
  }

  @Test
  void a_class_that_missed_why_the_shoe_is_glued_gets_the_other_glued_foot() {
    List<NextCases.Next> next =
        after(JUMPER, 15, model -> Answers.because(model, List.of("because it is torn")));
    assertThat(next.get(0).rules()).containsEntry("G005", 15).containsEntry("G006", 15);
    Exercise first = next.get(0).exercise();
    assertThat(Lessons.KEYS.get(first.name()).feet().values())
        .anySatisfy(foot -> assertThat(foot.model().because()).contains("G005", "G006"));
  }

  @Test
  void a_class_that_did_not_call_for_the_nail_gets_a_case_in_which_the_vet_is_called() {
    List<NextCases.Next> next =
        after("third-nail-two-days-on", 12, model -> Answers.vet(model, "none", List.of()));
    assertThat(next).isNotEmpty();
    for (NextCases.Next one : next) {
      assertThat(Lessons.KEYS.get(one.exercise().name()).feet().values())
          .anySatisfy(foot -> assertThat(foot.model().vet()).isNotEqualTo("none"));
    }
  }

  @Test
  void every_case_named_rests_on_the_rules_it_is_named_for_and_is_another_one() {
    List<NextCases.Next> next = after(JUMPER, 20, model -> FootAnswer.blank(model.limb()));
    assertThat(next).hasSizeBetween(1, 3);
    assertThat(next).extracting(one -> one.exercise().name()).doesNotContain(JUMPER);
    for (NextCases.Next one : next) {
      CaseKey key = Lessons.KEYS.get(one.exercise().name());
      List<String> fired = new ArrayList<>();
      key.feet()
          .values()
          .forEach(foot -> foot.foot().firings().forEach(it -> fired.add(it.rule())));
      assertThat(fired).as(one.exercise().name()).containsAll(one.rules().keySet());
    }
  }

  @Test
  void what_one_of_twenty_missed_does_not_choose_the_case_for_all() {
    CaseKey key = Lessons.KEYS.get(JUMPER);
    FootAnswer model = key.feet().values().iterator().next().model();
    List<ClassMarks.Row> rows = new ArrayList<>();
    for (int learner = 0; learner < 20; learner++) {
      FootAnswer own =
          learner == 0
              ? Answers.cautions(model, List.of())
              : Answers.ruledOut(model, java.util.Map.of());
      LearnerAnswer answer = Lessons.answer(key, own);
      rows.add(new ClassMarks.Row("" + learner, "x", Lessons.marks(key, answer), List.of()));
    }
    List<NextCases.Next> next =
        NextCases.after(
            new ClassMarks(key, Lessons.SCHEME, rows, null),
            Lessons.CASES.get(JUMPER),
            List.copyOf(Lessons.CASES.values()),
            one -> Lessons.KEYS.get(one.name()));
    assertThat(next)
        .isNotEmpty()
        .allSatisfy(one -> assertThat(one.rules()).containsOnlyKeys("N003"));
  }

  @Test
  void a_class_that_missed_nothing_gets_none() {
    assertThat(after(JUMPER, 0, model -> model)).isEmpty();
  }
}
