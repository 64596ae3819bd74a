package hornbook.interview;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.outcome.Outcome;
import hornbook.assessment.Assessment;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import hornbook.rules.Shipped;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whoever answers what is asked, and no more, is advised as if all that is known were told. */
class InterviewAgreesTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

  @Test
  void on_every_exercise() throws Exception {
    for (Assessment exercise : Feet.exercises()) {
      assertSameAdvice(exercise, exercise.horse().name());
    }
  }

  /** Of every other exercise a third is made up, of the rest all. */
  @Test
  void on_feet_of_which_everything_is_known_at_random() throws Exception {
    Random random = new Random(1919);
    double share = 1;
    for (Assessment exercise : Feet.exercises()) {
      share = share == 1 ? 0.3 : 1;
      String name = exercise.horse().name() + " " + share;
      assertSameAdvice(Feet.shuffled(exercise, random, share), name);
    }
  }

  private static void assertSameAdvice(Assessment whole, String name) {
    Interview interview =
        new Interview(Shipped.ADVISOR, BlankAssessment.of(List.of()), List.of(), Units.MM, TODAY);
    Farrier farrier = new Farrier(whole);
    int asked = 0;
    while (interview.ask().isPresent()) {
      InterviewQuestion ask = interview.ask().get();
      AnswerOutcome reply = interview.take(farrier.answer(ask, interview));
      assertThat(reply).as(name + ": " + ask).isInstanceOf(AnswerOutcome.Taken.class);
      assertThat(Feet.valid(interview.known())).as(name + " after " + ask).isTrue();
      assertThat(++asked).as(name + " comes to an end").isLessThan(400);
    }
    Assessment told = Feet.read(Feet.written(interview.known(), Units.MM));
    Advice full = Shipped.ADVISOR.judge(whole);
    Advice less = Shipped.ADVISOR.judge(told);
    for (int foot = 0; foot < whole.feet().size(); foot++) {
      Outcome one = Outcome.of(full.feet().get(foot));
      Outcome other = Outcome.of(less.feet().get(foot));
      String what = name + ", foot " + foot;
      assertThat(other.referrals()).as(what).isEqualTo(one.referrals());
      assertThat(other.techniques()).as(what).isEqualTo(one.techniques());
      assertThat(other.supports()).as(what).isEqualTo(one.supports());
      assertThat(other.cautions()).as(what).isEqualTo(one.cautions());
    }
  }
}
