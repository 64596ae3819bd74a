package hornbook.study.marking;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.report.classroom.MarksPage;
import hornbook.rules.Shipped;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.FootKey;
import hornbook.study.exercise.Answers;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.LearnerAnswer;
import hornbook.study.rulecase.RuleCase;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Marks of answers that are wholly right, wholly blank, and argued. */
class MarkerTest {
  private static final String JUMPER = "showjumper-torn-side";

  @TestFactory
  Stream<DynamicTest> every_model_answer_wins_all_marks_and_a_blank_sheet_none() {
    return Lessons.KEYS.values().stream()
        .map(
            key ->
                DynamicTest.dynamicTest(
                    key.name(),
                    () -> {
                      AnswerMarks full = Lessons.marks(key, Lessons.model(key));
                      assertThat(full.points()).allMatch(PointMarks::won);
                      assertThat(full.marks()).isEqualTo(full.of()).isPositive();
                      assertThat(full.capped()).isFalse();
                      AnswerMarks blank = Lessons.marks(key, Lessons.answer(key));
                      assertThat(blank.marks()).isZero();
                      assertThat(blank.capped()).isFalse();
                    }));
  }

  @Test
  void the_answer_to_a_foot_of_ones_own_wins_all_marks_too() throws Exception {
    for (RuleCase one : Shipped.ruleCases().values()) {
      assertThat(share(one.assessment())).as(one.rule()).isEqualTo(1);
    }
  }

  private static double share(Assessment assessment) {
    CaseKey key = Lessons.key(assessment);
    AnswerMarks marks = Lessons.marks(key, Lessons.model(key));
    return marks.marks() / marks.of();
  }

  private static FootAnswer model(String name) {
    return foot(name).model();
  }

  private static FootKey foot(String name) {
    return Lessons.KEYS.get(name).feet().values().iterator().next();
  }

  private static AnswerMarks mark(String name, FootAnswer foot) {
    CaseKey key = Lessons.KEYS.get(name);
    return Lessons.marks(key, Lessons.answer(key, foot));
  }

  private static double of(String name, FootAnswer foot, MarkedPoint point) {
    return mark(name, foot).points().stream()
        .filter(one -> one.point() == point)
        .findFirst()
        .orElseThrow()
        .marks();
  }

  @Test
  void what_was_left_out_is_not_the_same_as_none() {
    FootAnswer none = Answers.supports(model(JUMPER), List.of());
    FootAnswer left = Answers.supports(model(JUMPER), null);
    assertThat(of(JUMPER, none, MarkedPoint.SUPPORTS)).isEqualTo(1);
    assertThat(of(JUMPER, left, MarkedPoint.SUPPORTS)).isZero();
  }

  @Test
  void a_choice_that_can_be_defended_wins_part_and_one_that_is_ruled_out_caps_the_mark() {
    FootAnswer unshod = Answers.technique(model(JUMPER), "leave-unshod", null);
    assertThat(of(JUMPER, Answers.because(unshod, List.of()), MarkedPoint.TECHNIQUE)).isEqualTo(2);
    FootAnswer nailed = Answers.technique(model(JUMPER), "nail-on", null);
    AnswerMarks marks = mark(JUMPER, nailed);
    assertThat(marks.capped()).isTrue();
    assertThat(marks.marks()).isEqualTo(marks.cap()).isEqualTo(8).isLessThan(marks.before());
  }

  @Test
  void a_departure_with_a_reason_is_weighed_unless_a_call_for_the_vet_forbids_it() {
    FootAnswer nailed = Answers.technique(model(JUMPER), "nail-on", "the owner signs for it");
    assertThat(mark(JUMPER, nailed).capped()).isFalse();
    assertThat(of(JUMPER, nailed, MarkedPoint.TECHNIQUE)).isEqualTo(2);
    String laminitis = "fat-pony-footsore-in-may";
    FootAnswer shod = Answers.technique(model(laminitis), "nail-on", "the owner signs for it");
    assertThat(mark(laminitis, shod).capped()).isTrue();
  }

  @Test
  void the_right_choice_for_a_reason_that_does_not_hold_wins_part() {
    FootAnswer byChance = Answers.because(model(JUMPER), List.of("K001", "K002"));
    assertThat(foot(JUMPER).foot().firings()).extracting("rule").doesNotContain("K001", "K002");
    assertThat(of(JUMPER, byChance, MarkedPoint.TECHNIQUE)).isEqualTo(2);
    assertThat(of(JUMPER, byChance, MarkedPoint.REASONS)).isZero();
  }

  @Test
  void calling_the_vet_a_step_too_soon_is_careful_and_much_too_soon_is_not() {
    FootAnswer mention = Answers.vet(model(JUMPER), "mention", List.of());
    assertThat(of(JUMPER, mention, MarkedPoint.VET)).isEqualTo(2);
    String cob = "sound-hunter-reset";
    FootAnswer now = Answers.vet(model(cob), "now", List.of());
    assertThat(of(cob, now, MarkedPoint.VET)).isZero();
    assertThat(mark(cob, now).capped()).isFalse();
  }

  /** Whatever was answered, every form of the page can be written. */
  @Test
  void the_page_of_a_class_is_written_whatever_was_answered() {
    for (CaseKey key : Lessons.KEYS.values()) {
      List<ClassMarks.Row> rows =
          List.of(
              new ClassMarks.Row("1", "1", Lessons.marks(key, Lessons.answer(key)), List.of()),
              new ClassMarks.Row("2", "2", Lessons.marks(key, Lessons.model(key)), List.of()));
      ClassMarks marks = new ClassMarks(key, Lessons.SCHEME, rows, null);
      assertThat(MarksPage.text(marks, key.name(), List.of())).contains("2 of 2 answers marked");
      assertThat(MarksPage.html(marks, key.name(), List.of())).contains("</html>");
      assertThat(ClassAnalysis.of(marks).missed()).isNotEmpty();
    }
  }

  @Test
  void marks_of_several_feet_add_up() {
    CaseKey key = Lessons.KEYS.get("club-foot-and-its-pair");
    LearnerAnswer one = Lessons.answer(key, Lessons.model(key).feet().get(0));
    AnswerMarks marks = Lessons.marks(key, one);
    assertThat(marks.of()).isEqualTo(40);
    assertThat(marks.marks()).isEqualTo(20);
  }
}
