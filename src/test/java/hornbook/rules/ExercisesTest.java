package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.Judged;
import hornbook.advice.Verdict;
import hornbook.assessment.AssessmentReader;
import hornbook.assessment.Located;
import hornbook.assessment.ReadResult;
import hornbook.rulebook.fact.Urgency;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The advice on every teaching case is what the case expects of a careful farrier. */
class ExercisesTest {
  @TestFactory
  Stream<DynamicTest> the_advice_is_what_the_case_expects() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      ReadResult read = AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
      assertThat(read).as(file.toString()).isInstanceOf(ReadResult.Good.class);
      ReadResult.Good good = (ReadResult.Good) read;
      Located expected = good.caseFile().orElseThrow().expected();
      assertThat(expected).as(file + ": expected").isInstanceOf(Located.Group.class);
      List<FootAdvice> feet = Shipped.ADVISOR.advise(good.assessment()).feet();
      Map<String, Located.Member> byFoot = ((Located.Group) expected).members();
      assertThat(byFoot).as(file + ": feet").isNotEmpty();
      byFoot.forEach(
          (limb, member) ->
              tests.add(
                  DynamicTest.dynamicTest(
                      file.getFileName() + " " + limb,
                      () -> holds(foot(feet, limb), (Located.Group) member.value()))));
    }
    return tests.stream();
  }

  private static void holds(FootAdvice foot, Located.Group expected) {
    assertThat(expected.members().keySet())
        .containsExactlyInAnyOrder("firstChoice", "urgency", "ruledOut", "supports");
    assertThat(foot.firstChoice().map(Judged::id).orElse("none"))
        .as("first choice")
        .isEqualTo(text(expected.get("firstChoice")));
    assertThat(foot.urgency().map(Urgency::word).orElse("none"))
        .as("urgency")
        .isEqualTo(text(expected.get("urgency")));
    for (String id : words(expected.get("ruledOut"))) {
      assertThat(judged(foot, id).verdict()).as(id).isEqualTo(Verdict.RULED_OUT);
    }
    for (String id : words(expected.get("supports"))) {
      assertThat(foot.support(id)).as(id).isNotNull();
      assertThat(foot.support(id).verdict()).as(id).isEqualTo(Verdict.WORKABLE);
    }
  }

  private static FootAdvice foot(List<FootAdvice> feet, String limb) {
    return feet.stream()
        .filter(foot -> foot.limb().word().equals(limb))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no foot " + limb + " in the assessment"));
  }

  private static Judged judged(FootAdvice foot, String id) {
    Judged technique = foot.technique(id);
    Judged judged = technique == null ? foot.support(id) : technique;
    assertThat(judged).as(id + " is a technique or a support").isNotNull();
    return judged;
  }

  private static List<String> words(Located list) {
    assertThat(list).isInstanceOf(Located.Items.class);
    return ((Located.Items) list).items().stream().map(ExercisesTest::text).toList();
  }

  private static String text(Located scalar) {
    assertThat(scalar).isInstanceOf(Located.Scalar.class);
    return ((Located.Scalar) scalar).text().strip();
  }
}
