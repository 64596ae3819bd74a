package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import hornbook.assessment.tree.Fault;
import hornbook.rulebook.NamedOption;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.ExerciseLibrary;
import hornbook.study.exercise.ExerciseReader;
import hornbook.study.exercise.LibraryCheck;
import hornbook.study.exercise.Vocabulary;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

  /** What the library has to have, by the words of the rule base. */
  @Test
  void every_technique_support_and_urgency_and_every_kind_of_horse_is_covered() throws Exception {
    List<String> first = new ArrayList<>();
    List<String> supports = new ArrayList<>();
    List<String> urgencies = new ArrayList<>();
    List<String> limbs = new ArrayList<>();
    List<String> kinds = new ArrayList<>();
    for (Exercise one : library().cases().values()) {
      one.expected()
          .forEach(
              (limb, expected) -> {
                first.add(expected.firstChoice());
                supports.addAll(expected.supports());
                urgencies.add(expected.urgency());
                limbs.add(limb.word());
                String end = limb.fore() ? "fore" : "hind";
                kinds.add(kind(one) + " " + end + ", " + expected.urgency());
                kinds.add(kind(one));
              });
    }
    assertThat(first).contains("none").containsAll(ids(Shipped.BOOK.techniques()));
    assertThat(supports).containsAll(ids(Shipped.BOOK.supports()));
    assertThat(urgencies).containsAll(Vocabulary.URGENCIES);
    assertThat(limbs).contains("left-fore", "right-fore", "left-hind", "right-hind");
    assertThat(kinds)
        .contains("foal", "racing", "sport", "light", "breeding", "rest", "draught")
        .contains("heavy draught fore, now", "heavy draught hind, none", "foal fore, today");
    assertThat(library().cases().values())
        .extracting(Exercise::level)
        .contains(1, 2, 3)
        .hasSizeGreaterThanOrEqualTo(45);
  }

  private static List<String> ids(List<NamedOption> options) {
    return options.stream().map(NamedOption::id).toList();
  }

  private static String kind(Exercise one) {
    var horse = one.assessment().horse();
    boolean heavy = horse.weight() != null && horse.weight() >= 700;
    return horse.ageDays() != null
        ? "foal"
        : (heavy ? "heavy " : "") + horse.work().name().toLowerCase(Locale.ROOT);
  }

  /** Eight at least, each named from both sides. */
  @Test
  void there_are_pairs_enough_and_each_half_names_the_other() throws Exception {
    Map<String, Exercise> cases = library().cases();
    List<Exercise> halves = cases.values().stream().filter(one -> one.pair() != null).toList();
    assertThat(halves).hasSizeGreaterThanOrEqualTo(16);
    assertThat(halves).allMatch(one -> one.name().equals(cases.get(one.pair()).pair()));
  }

  /** The works in which an author would choose otherwise, each by name. */
  @Test
  void where_authors_differ_the_case_says_who() throws Exception {
    List<String> differing =
        library().cases().values().stream()
            .filter(one -> !one.differs().isEmpty())
            .map(Exercise::name)
            .toList();
    assertThat(differing)
        .contains("showjumper-torn-side", "quarter-crack-from-the-coronet", "bare-eventer-sound")
        .hasSizeGreaterThanOrEqualTo(15);
    Exercise without =
        read(
            unpaired("quarter-crack-from-the-coronet")
                .replace("without: float-wall", "without: egg-bar"));
    assertThat(new LibraryCheck(Shipped.ADVISOR, library().cases()).faults(without))
        .extracting(Fault::found)
        .containsExactly("egg-bar");
    Exercise forbidden =
        read(
            text("heavy-mare-trod-on-her-coronet")
                .replace(
                    "teaching:\n",
                    "differs:\n  - {foot: left-fore, technique: nail-on, source: practice, says: x}\n"
                        + "teaching:\n"));
    assertThat(new LibraryCheck(Shipped.ADVISOR, library().cases()).faults(forbidden))
        .extracting(Fault::allowed)
        .containsExactly("nothing that a call for the vet forbids");
  }

  @Test
  void a_case_of_which_the_rule_base_thinks_otherwise_is_found() throws Exception {
    Exercise wrong =
        read(
            unpaired("showjumper-torn-side")
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
    String torn = unpaired("showjumper-torn-side");
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
            .filter(fault -> !fault.allowed().equals("a case that names this one as its pair"))
            .map(Fault::found)
            .toList();
  }

  @Test
  void a_pair_that_is_not_there_is_found() throws Exception {
    Exercise one = read("pair: showjumper-torn-sida\n" + unpaired("showjumper-torn-side"));
    assertThat(new LibraryCheck(Shipped.ADVISOR, library().cases()).faults(one))
        .extracting(Fault::path, Fault::line)
        .containsExactly(tuple("pair", 1));
  }

  @Test
  void a_pair_named_from_one_side_alone_is_found() throws Exception {
    Exercise one = read("pair: foal-trim\n" + unpaired("foal-chipped-toe"));
    assertThat(new LibraryCheck(Shipped.ADVISOR, library().cases()).faults(one))
        .extracting(Fault::allowed)
        .contains("a case that names this one as its pair");
  }

  private static String unpaired(String name) throws Exception {
    return text(name).replaceFirst("(?m)^pair: .*\n", "");
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
