package hornbook.study.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.tree.Fault;
import hornbook.study.marking.Lessons;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Answers as learners write them, and what is said of those that cannot be. */
class AnswerReaderTest {
  private static final List<Foot> FEET =
      Lessons.CASES.get("club-foot-and-its-pair").assessment().feet();

  private final List<Fault> faults = new ArrayList<>();

  private LearnerAnswer read(String text) {
    return AnswerReader.read(
        text.getBytes(StandardCharsets.UTF_8), "14.yaml", Lessons.WORDS, FEET, faults);
  }

  @Test
  void an_answer_is_read_word_for_word() {
    LearnerAnswer answer =
        read(
            """
            format: hornbook-answer/1
            case: club-foot-and-its-pair
            by: "14"
            feet:
              - limb: left-fore
                findings: [not-nailable]
                vet: none
                vetFor: []
                technique: glue-on
                because: [n003, "the wall is gone"]
                ruledOut: {nail-on: [N003], heel-wedge: []}
                supports: none
                ask: [hoofHeat, horse.weight, "feet[left-fore].signs.stain"]
                nextVisit: 6 weeks
            """);
    assertThat(faults).isEmpty();
    assertThat(answer.by()).isEqualTo("14");
    FootAnswer foot = answer.foot(Limb.LEFT_FORE);
    assertThat(foot.because()).containsExactly("N003", "the wall is gone");
    assertThat(foot.becauseRules()).containsExactly("N003");
    assertThat(foot.ruledOut())
        .isEqualTo(Map.of("nail-on", List.of("N003"), "heel-wedge", List.of()));
    assertThat(foot.supports()).isEmpty();
    assertThat(foot.cautions()).isNull();
    assertThat(foot.ask())
        .containsExactly("feet[1].signs.hoofHeat", "horse.weight", "feet[1].signs.stain");
    assertThat(foot.nextVisit()).isEqualTo(42);
    assertThat(answer.foot(Limb.RIGHT_FORE)).isEqualTo(FootAnswer.blank(Limb.RIGHT_FORE));
  }

  @Test
  void json_is_read_alike() {
    LearnerAnswer answer =
        read(
            "{\"format\": \"hornbook-answer/1\", \"feet\": [{\"limb\": \"left-fore\","
                + " \"technique\": \"none\"}]}");
    assertThat(faults).isEmpty();
    assertThat(answer.foot(Limb.LEFT_FORE).technique()).isEqualTo("none");
    assertThat(answer.caseName()).isNull();
  }

  @Test
  void every_fault_is_told_with_its_place_what_is_allowed_and_the_nearest_word() {
    read(
        """
        format: hornbook-answer/1
        feet:
          - limb: left-fore
            findings: [not-nailabel]
            vet: tomorrow
            technique: glueon
            because: [N999]
            ruledOut: {nail-on: [N03]}
            ask: [hoofheat]
            nextVisit: soon
            remarks: none
          - limb: left-hind
        """);
    assertThat(faults)
        .extracting(Fault::line, Fault::path, Fault::nearest)
        .contains(
            tuple(4, "feet[0].findings[0]", "not-nailable"),
            tuple(5, "feet[0].vet", null),
            tuple(6, "feet[0].technique", "glue-on"),
            tuple(8, "feet[0].ruledOut.nail-on[0]", "N003"),
            tuple(9, "feet[0].ask[0]", "signs.hoofHeat"),
            tuple(10, "feet[0].nextVisit", null),
            tuple(12, "feet[1].limb", null));
    assertThat(faults)
        .allSatisfy(fault -> assertThat(fault.allowed()).as(fault.path()).isNotBlank())
        .anyMatch(fault -> fault.path().equals("feet[0].remarks") && fault.line() == 11)
        .anyMatch(fault -> fault.path().equals("feet[0].because[0]") && fault.line() == 7);
  }

  @Test
  void a_file_that_is_something_else_is_told_so() {
    read("format: hornbook-assessment/1\nfeet: []\n");
    assertThat(faults)
        .extracting(Fault::path, Fault::allowed)
        .containsExactly(tuple("format", LearnerAnswer.FORMAT));
    faults.clear();
    assertThat(read("")).isNull();
    assertThat(faults).hasSize(1);
    faults.clear();
    read("- a list\n");
    assertThat(faults).hasSize(1);
    faults.clear();
    read("format: hornbook-answer/1\n");
    assertThat(faults).extracting(Fault::path).containsExactly("feet");
  }

  @Test
  void one_foot_is_answered_once() {
    read(
        "format: hornbook-answer/1\nfeet:\n  - {limb: left-fore, vet: none}\n"
            + "  - {limb: left-fore, vet: now}\n");
    assertThat(faults).extracting(Fault::line).containsExactly(4);
  }
}
