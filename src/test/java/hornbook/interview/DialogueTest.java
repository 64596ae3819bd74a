package hornbook.interview;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.QuestionValue;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.word.DigitalPulse;
import hornbook.assessment.word.TesterSite;
import hornbook.interview.InterviewQuestion.Form;
import hornbook.rules.Shipped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is asked in which order, and what becomes of what is typed. */
class DialogueTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

  private static Interview begin(Units units, Limb... limbs) {
    Assessment blank = BlankAssessment.of(List.of(limbs));
    return new Interview(Shipped.ADVISOR, blank, List.of(limbs), units, TODAY);
  }

  /** Passes everything over until the field is asked for. */
  private static Interview at(String field, Interview interview) {
    while (!ask(interview).path().equals(field)) {
      taken(interview, ask(interview).path().endsWith("limb") ? "left-fore" : "");
    }
    return interview;
  }

  private static InterviewQuestion ask(Interview interview) {
    return interview.ask().orElseThrow(() -> new AssertionError("the interview is over"));
  }

  private static void taken(Interview interview, String line) {
    assertThat(interview.take(line)).as(line).isInstanceOf(AnswerOutcome.Taken.class);
  }

  private static AnswerOutcome.Refused refused(Interview interview, String line) {
    InterviewQuestion before = ask(interview);
    Assessment known = interview.known();
    AnswerOutcome reply = interview.take(line);
    assertThat(reply).as(line).isInstanceOf(AnswerOutcome.Refused.class);
    assertThat(ask(interview)).isEqualTo(before);
    assertThat(interview.known()).isEqualTo(known);
    return (AnswerOutcome.Refused) reply;
  }

  @Test
  void the_foot_comes_first_then_the_horse() {
    Interview interview = begin(Units.MM);
    List<String> asked = new ArrayList<>();
    for (String answer : List.of("2", "Tansy", "today", "8")) {
      asked.add(ask(interview).path());
      taken(interview, answer);
    }
    assertThat(asked).containsExactly("feet[0].limb", "horse.name", "visit.date", "horse.ageYears");
    assertThat(interview.known().feet().get(0).limb()).isEqualTo(Limb.RIGHT_FORE);
    assertThat(interview.known().visit().date()).isEqualTo(TODAY);
    assertThat(interview.known().horse().ageYears()).isEqualTo(8);
  }

  @Test
  void a_foot_has_to_be_named_and_several_may_be() {
    Interview interview = begin(Units.MM);
    refused(interview, "");
    refused(interview, "none");
    assertThat(refused(interview, "left-frore").nearest()).isEqualTo("left-fore");
    taken(interview, "left-fore, 2");
    assertThat(interview.known().feet())
        .extracting(foot -> foot.limb())
        .containsExactly(Limb.LEFT_FORE, Limb.RIGHT_FORE);
  }

  @Test
  void what_could_call_the_vet_comes_before_what_could_change_the_shoe() {
    Interview interview = begin(Units.MM, Limb.LEFT_FORE);
    Set<String> asked = new HashSet<>();
    QuestionValue last = QuestionValue.NOW;
    while (interview.ask().isPresent()) {
      InterviewQuestion ask = ask(interview);
      boolean first = asked.add(ask.path());
      assertThat(first || ask.form() == Form.STRETCH_END).as("once: " + ask.path()).isTrue();
      if (ask.matter() != null) {
        assertThat(ask.matter().worth()).as(ask.path()).isGreaterThanOrEqualTo(last);
        assertThat(ask.matter().worth()).isNotEqualTo(QuestionValue.MEASURE);
        last = ask.matter().worth();
      }
      taken(interview, "");
    }
    assertThat(asked).contains("feet[0].signs.digitalPulse", "feet[0].wall", "horse.weight");
    assertThat(interview.unanswered()).as("passed over").isGreaterThan(50);
  }

  @Test
  void nothing_is_asked_that_an_answer_has_settled() {
    Interview sound = at("feet[0].lameness", begin(Units.MM));
    taken(sound, "0");
    Set<String> asked = new HashSet<>();
    while (sound.ask().isPresent()) {
      asked.add(ask(sound).path());
      taken(sound, "");
    }
    assertThat(asked).doesNotContain("feet[0].lameness");
    Interview all = begin(Units.MM, Limb.LEFT_FORE);
    int passedOver = 0;
    while (all.ask().isPresent()) {
      passedOver++;
      taken(all, "");
    }
    assertThat(asked.size()).isLessThan(passedOver);
  }

  @Test
  void a_number_a_word_and_the_beginning_of_a_word_say_the_same() {
    for (String said : List.of("3", "bounding", "BOUNDING", "bou")) {
      Interview interview = at("feet[0].signs.digitalPulse", begin(Units.MM));
      taken(interview, said);
      assertThat(interview.known().feet().get(0).signs().digitalPulse())
          .isEqualTo(DigitalPulse.BOUNDING);
    }
    Interview interview = at("feet[0].signs.digitalPulse", begin(Units.MM));
    assertThat(refused(interview, "boundign").nearest()).isEqualTo("bounding");
    refused(interview, "4");
  }

  @Test
  void a_list_takes_several_and_none() {
    Interview interview = at("feet[0].signs.testerPain", begin(Units.MM));
    taken(interview, "toe, 7");
    assertThat(interview.known().feet().get(0).signs().testerPain())
        .containsExactly(TesterSite.TOE, TesterSite.NAIL);
    interview = at("feet[0].signs.testerPain", begin(Units.MM));
    taken(interview, "none");
    assertThat(interview.known().feet().get(0).signs().testerPain()).isEmpty();
  }

  @Test
  void lengths_come_in_the_units_of_the_user_or_with_their_own() {
    Interview inches = at("feet[0].measures.bearingLength", begin(Units.INCH));
    taken(inches, "5 1/8");
    assertThat(inches.known().feet().get(0).measures().bearingLength()).isEqualTo(130.175);
    Interview metric = at("feet[0].measures.bearingLength", begin(Units.MM));
    taken(metric, "5 1/8 in");
    assertThat(metric.known().feet().get(0).measures().bearingLength()).isEqualTo(130.175);
    Interview bare = at("feet[0].measures.bearingLength", begin(Units.MM));
    refused(bare, "13000");
    refused(bare, "long");
    taken(bare, "130");
    assertThat(bare.known().feet().get(0).measures().bearingLength()).isEqualTo(130);
  }

  @Test
  void a_contradiction_is_told_at_once() {
    Interview interview = at("feet[0].measures.bearingLength", begin(Units.MM));
    taken(interview, "130");
    at("feet[0].measures.toeToWidest", interview);
    assertThat(refused(interview, "140").allowed()).contains("bearing length");
    taken(interview, "62");
  }

  @Test
  void back_asks_the_last_question_again_and_takes_its_answer_away() {
    Interview interview = begin(Units.MM);
    assertThat(interview.take("<")).isEqualTo(new AnswerOutcome.Back(false));
    taken(interview, "1");
    taken(interview, "Tansy");
    assertThat(ask(interview).path()).isEqualTo("visit.date");
    assertThat(interview.take("<")).isEqualTo(new AnswerOutcome.Back(true));
    assertThat(ask(interview).path()).isEqualTo("horse.name");
    assertThat(interview.known().horse().name()).isNull();
    taken(interview, "Teasel");
    assertThat(interview.known().horse().name()).isEqualTo("Teasel");
  }

  @Test
  void help_and_stop_answer_nothing() {
    Interview interview = at("feet[0].signs.digitalPulse", begin(Units.MM));
    InterviewQuestion ask = ask(interview);
    assertThat(interview.take("?")).isInstanceOf(AnswerOutcome.Help.class);
    assertThat(interview.take("stop")).isInstanceOf(AnswerOutcome.Stop.class);
    assertThat(ask(interview)).isEqualTo(ask);
    assertThat(interview.left()).isGreaterThan(10);
  }

  @Test
  void the_wall_is_mapped_from_the_toe_back_inner_side_first() {
    Interview interview = at("feet[0].measures.bearingLength", begin(Units.MM));
    taken(interview, "130");
    at("feet[0].measures.width", interview);
    taken(interview, "124");
    at("feet[0].wall", interview);
    assertThat(ask(interview).side()).isEqualTo(Side.MEDIAL);
    for (String answer : List.of("40", "separated", "38", "7", "no", "no")) {
      taken(interview, answer);
    }
    assertThat(ask(interview).form()).isEqualTo(Form.STRETCH_END);
    assertThat(ask(interview).from()).isEqualTo(40);
    refused(interview, "30");
    refused(interview, "999");
    for (String answer : List.of("heel", "sound", "9")) {
      taken(interview, answer);
    }
    assertThat(ask(interview).side()).as("the heel is reached").isEqualTo(Side.LATERAL);
    assertThat(ask(interview).from()).isZero();
    for (String answer : List.of("heel", "1", "9")) {
      taken(interview, answer);
    }
    List<WallStretch> wall = interview.known().feet().get(0).wall();
    assertThat(wall).hasSize(3);
    assertThat(wall.get(0))
        .isEqualTo(
            new WallStretch(
                Side.MEDIAL, 0.0, 40.0, WallState.SEPARATED, 38.0, 7.0, null, false, null, false));
    assertThat(wall.get(1).from()).isEqualTo(40);
    assertThat(wall.get(2).side()).isEqualTo(Side.LATERAL);
    assertThat(interview.ask().map(InterviewQuestion::path))
        .isNotEqualTo(java.util.Optional.of("feet[0].wall"));
  }

  @Test
  void cracks_are_counted_and_then_looked_at_one_by_one() {
    Interview interview = at("feet[0].cracks", begin(Units.MM));
    refused(interview, "many");
    taken(interview, "2");
    assertThat(interview.known().feet().get(0).cracks()).hasSize(2);
    List<String> asked = new ArrayList<>();
    while (ask(interview).path().startsWith("feet[0].cracks[")) {
      asked.add(ask(interview).path());
      taken(interview, "");
    }
    assertThat(asked).contains("feet[0].cracks[0].bleeds", "feet[0].cracks[1].bleeds");
    assertThat(asked.stream().map(path -> path.substring(0, path.indexOf(']', 8)))).isSorted();
  }

  @Test
  void the_other_foot_is_asked_for_what_is_compared_and_no_more() {
    Interview interview = begin(Units.MM);
    taken(interview, "left-fore");
    Set<String> ofOther = new HashSet<>();
    while (interview.ask().isPresent()) {
      String path = ask(interview).path();
      boolean other = path.contains("right-fore") || path.startsWith("feet[1]");
      if (other) {
        ofOther.add(path.substring(path.indexOf('.') + 1));
      }
      taken(interview, other && path.endsWith("toeAngle") ? "50" : "");
    }
    assertThat(ofOther)
        .isSubsetOf(
            "lameness",
            "lameForDays",
            "measures.toeAngle",
            "signs.frogState",
            "signs.hoofHeat",
            "signs.digitalPulse");
    assertThat(ofOther).contains("measures.toeAngle");
    Interview later = new Interview(Shipped.ADVISOR, interview.known(), List.of(), Units.MM, TODAY);
    assertThat(later.ask()).isPresent();
  }
}
