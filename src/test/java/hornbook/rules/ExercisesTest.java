package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import hornbook.assessment.tree.Fault;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.ExerciseLibrary;
import hornbook.study.exercise.ExerciseReader;
import hornbook.study.exercise.LibraryCheck;
import hornbook.study.exercise.Vocabulary;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The teaching cases can be read, and the advice on each is what it expects of a farrier. */
class ExercisesTest {
  private static ExerciseLibrary library() throws Exception {
    return ExerciseLibrary.read(Shipped.EXERCISES, Vocabulary.of(Shipped.BOOK));
  }

  @Test
  void every_case_can_be_read() throws Exception {
    ExerciseLibrary library = library();
    assertThat(library.faults()).extracting(Fault::message).isEmpty();
    assertThat(library.cases()).hasSameSizeAs(Shipped.files(Shipped.EXERCISES)).isNotEmpty();
  }

  @TestFactory
  Stream<DynamicTest> the_advice_is_what_the_case_expects() throws Exception {
    ExerciseLibrary library = library();
    LibraryCheck check = new LibraryCheck(Shipped.ADVISOR, library.cases());
    return library.cases().values().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name(),
                    () -> {
                      assertThat(one.expected()).isNotEmpty();
                      assertThat(check.faults(one)).extracting(Fault::message).isEmpty();
                    }));
  }

  @Test
  void every_case_teaches_something_and_says_what() throws Exception {
    for (Exercise one : library().cases().values()) {
      assertThat(one.asks()).as(one.name()).isNotEmpty();
      assertThat(one.notes()).as(one.name()).isNotEmpty();
      assertThat(one.topics()).as(one.name()).isNotEmpty();
      assertThat(one.read().caseFile().orElseThrow().whole().get("level")).isNotNull();
    }
  }

  @Test
  void a_case_of_which_the_rule_base_thinks_otherwise_is_found() throws Exception {
    Exercise wrong =
        read(
            text("showjumper-torn-side")
                .replace("firstChoice: glue-on", "firstChoice: nail-on")
                .replace("urgency: none", "urgency: today")
                .replace(
                    "ruledOut: [nail-on]", "ruledOut: [leave-unshod]\n    ask: [horse.weight]"));
    assertThat(new LibraryCheck(Shipped.ADVISOR, library().cases()).faults(wrong))
        .extracting(Fault::path)
        .containsExactly(
            "expected.left-fore.firstChoice",
            "expected.left-fore.urgency",
            "expected.left-fore.ruledOut",
            "expected.left-fore.ask");
  }

  @Test
  void a_pair_differs_in_one_fact_and_in_the_answer() throws Exception {
    String torn = text("showjumper-torn-side");
    String whole = torn.replace("state: broken-away, height: 26 mm", "state: sound, height: 26 mm");
    assertThat(pair(whole)).isEmpty();
    assertThat(pair(torn)).containsExactly("the same facts", "the same answer to both");
    assertThat(pair(torn.replace("name: Tansy", "name: Teasel").replace("16 C", "17 C")))
        .containsExactly("the same answer to both");
    assertThat(pair(whole.replace("lostShoe: true", "lostShoe: false")))
        .containsExactly("feet[0].lostShoe, feet[0].wall[2].state");
    assertThat(
            pair(
                torn.replace(
                    "cracks: []",
                    "cracks:\n        - {place: quarter, side: medial, starts: coronet, depth: deep,"
                        + " bleeds: true, moves: false}")))
        .isEmpty();
    String lame = torn.replace("lameness: 0", "lameness: 3");
    assertThat(pair(lame.replace("onset: none", "onset: gradual"))).isEmpty();
    assertThat(
            pair(
                torn.replace("onset: none", "onset: gradual")
                    .replace("lameForDays: 0", "lameForDays: 2")))
        .contains("feet[0].lameForDays, feet[0].onset");
    assertThat(pair(torn.replace("to: 68 mm", "to: 60 mm").replace("from: 68 mm", "from: 60 mm")))
        .doesNotContain("feet[0].wall[2].to, feet[0].wall[3].from");
  }

  /** What keeps the case in that text from being a pair of the show jumper. */
  private static List<String> pair(String text) throws Exception {
    Exercise other = read("pair: showjumper-torn-side\n" + text);
    return new LibraryCheck(Shipped.ADVISOR, library().cases())
        .faults(other).stream()
            .filter(fault -> fault.path().equals("pair"))
            .map(Fault::found)
            .toList();
  }

  @Test
  void a_pair_that_is_not_there_is_found() throws Exception {
    Exercise one = read("pair: showjumper-torn-sida\n" + text("showjumper-torn-side"));
    assertThat(new LibraryCheck(Shipped.ADVISOR, library().cases()).faults(one))
        .extracting(Fault::path, Fault::line)
        .containsExactly(tuple("pair", 1));
  }

  private static String text(String name) throws Exception {
    return Files.readString(ExerciseLibrary.file(Shipped.EXERCISES, name));
  }

  private static Exercise read(String text) {
    List<Fault> faults = new ArrayList<>();
    Exercise read =
        ExerciseReader.read(
            text.getBytes(StandardCharsets.UTF_8), "one.yaml", Vocabulary.of(Shipped.BOOK), faults);
    assertThat(faults).extracting(Fault::message).isEmpty();
    return read;
  }
}
