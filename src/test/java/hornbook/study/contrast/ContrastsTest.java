package hornbook.study.contrast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.outcome.Outcome;
import hornbook.assessment.field.Fields;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.rulebook.compile.MissingFromRulebook;
import hornbook.rules.Shipped;
import hornbook.study.Given;
import hornbook.study.contrast.Contrast.Change;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ContrastsTest {
  private static final Contrasts IN_MM = new Contrasts(Shipped.ADVISOR, Units.MM);
  private static final Contrasts IN_INCHES = new Contrasts(Shipped.ADVISOR, Units.INCH);

  private static final List<String> LEFT_ALONE =
      List.of("limb", "name", "ageYears", "ageDays", "date", "work", "vet", "side", "shoeing");

  static Stream<Path> exercises() throws IOException {
    return Shipped.files(Shipped.EXERCISES).stream();
  }

  /** Read anew from the file, with what is printed behind {@code --set} and nothing else. */
  private static Outcome again(Path file, int foot, List<String> settings) throws IOException {
    List<Setting> set = settings.stream().map(Setting::parse).toList();
    ReadResult.Good read =
        Given.good(AssessmentReader.read(Files.readAllBytes(file), file.toString(), set));
    return Outcome.of(Shipped.ADVISOR.judge(read.assessment()).feet().get(foot));
  }

  private static List<FootContrasts> all(Path file, Contrasts contrasts, int most) {
    ReadResult.Good read = Given.read(file);
    List<FootContrasts> all = new ArrayList<>();
    for (int foot = 0; foot < read.assessment().feet().size(); foot++) {
      all.add(contrasts.of(read, foot, null, most, done -> {}));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void every_contrast_comes_about_by_its_own_settings_and_nothing_else_does(Path file)
      throws IOException {
    Contrasts units = file.hashCode() % 2 == 0 ? IN_MM : IN_INCHES;
    for (FootContrasts one : all(file, units, Contrasts.USUAL)) {
      assertThat(one.contrasts()).as(file.toString()).isNotEmpty();
      for (Contrast contrast : one.contrasts()) {
        reproduced(file, one, contrast);
      }
      inOrder(one);
    }
  }

  private static void reproduced(Path file, FootContrasts one, Contrast contrast)
      throws IOException {
    String what = file + " " + contrast.settings();
    Outcome other = again(file, one.foot().index(), contrast.settings());
    Map<String, String> expected = told(Outcome.of(one.foot()));
    for (OutcomeChange turn : contrast.gives()) {
      assertThat(expected.getOrDefault(turn.id(), OutcomeChange.NONE))
          .as(what)
          .isEqualTo(turn.from());
      expected.put(turn.id(), turn.to());
    }
    expected.values().removeIf(OutcomeChange.NONE::equals);
    assertThat(told(other)).as(what).isEqualTo(expected);
    assertThat(contrast.gives()).as(what).isNotEmpty();
  }

  /** Every verdict and call for the vet, by id. */
  private static Map<String, String> told(Outcome standing) {
    Map<String, String> told = new TreeMap<>();
    standing.techniques().forEach((id, verdict) -> told.put(id, verdict.word()));
    standing.supports().forEach((id, verdict) -> told.put(id, verdict.word()));
    standing.referrals().forEach((id, urgency) -> told.put(id, urgency.word()));
    return told;
  }

  private static void inOrder(FootContrasts one) {
    assertThat(one.contrasts())
        .isSortedAccordingTo(
            Comparator.comparing(Contrast::errors)
                .thenComparing(contrast -> contrast.changes().size()));
    assertThat(one.contrasts()).hasSizeLessThanOrEqualTo(Contrasts.USUAL);
    for (Contrast contrast : one.contrasts()) {
      double sum = contrast.changes().stream().mapToDouble(Change::errors).sum();
      assertThat(contrast.errors()).isCloseTo(sum, within(1e-9)).isPositive();
      for (Change change : contrast.changes()) {
        assertThat(change.what().paths())
            .allSatisfy(path -> assertThat(Fields.at(path).fixed()).as(path).isFalse())
            .noneMatch(path -> path.startsWith("kit."))
            .noneMatch(path -> LEFT_ALONE.contains(path.substring(path.lastIndexOf('.') + 1)));
      }
    }
  }

  /** What two or three do together, none of them does alone and no two of the three do. */
  @ParameterizedTest
  @CsvSource({
    "racehorse-both-sides-broken, glue-on, 2",
    "nail-in-the-frog, nail-on, 3",
    "fat-pony-footsore-in-may, nail-on, 0"
  })
  void no_part_of_a_set_gives_what_the_set_gives(String name, String wanted, int things)
      throws IOException {
    Path file = Shipped.EXERCISES.resolve(name + ".yaml");
    FootContrasts one = IN_MM.of(Given.read(file), 0, wanted, 6, done -> {});
    assertThat(one.contrasts().stream().mapToInt(c -> c.changes().size()).max().orElse(0))
        .as(name)
        .isEqualTo(things);
    for (Contrast contrast : one.contrasts()) {
      reproduced(file, one, contrast);
      assertThat(again(file, 0, contrast.settings()).firstChoice()).contains(wanted);
      for (List<Change> part : parts(contrast.changes())) {
        List<String> some = part.stream().flatMap(c -> c.settings().stream()).toList();
        assertThat(again(file, 0, some).firstChoice())
            .as(some.toString())
            .isNotEqualTo(Optional.of(wanted));
      }
    }
  }

  private static List<List<Change>> parts(List<Change> changes) {
    List<List<Change>> parts = new ArrayList<>();
    for (int some = 1; some < (1 << changes.size()) - 1; some++) {
      List<Change> part = new ArrayList<>();
      for (int at = 0; at < changes.size(); at++) {
        if ((some & 1 << at) != 0) {
          part.add(changes.get(at));
        }
      }
      parts.add(part);
    }
    return parts;
  }

  /**
   * Heels are under-run where the toe angle is 5 degrees or more above the heel angle (Turner
   * 1992), and the egg bar is then of use. An angle errs by 2 degrees and is read to the half.
   */
  @ParameterizedTest
  @CsvSource({"50, 46, 51, 45", "50, 46.5, 51.5, 45", "52.2, 47.3, 52.5, 47", "50, 48, 53, 45"})
  void the_distance_to_a_limit_is_the_size_of_the_contrast(
      double toe, double heel, double toeTo, double heelTo) {
    FootContrasts one =
        sparse("toeAngle: %s, heelAngle: %s".formatted(toe, heel), "egg-bar", IN_MM);
    assertThat(one.contrasts()).allMatch(contrast -> contrast.changes().size() == 1);
    assertThat(settings(one))
        .containsOnly(
            Map.entry(
                "feet[0].measures.toeAngle=%s deg".formatted(plain(toeTo)), errors(toe, toeTo)),
            Map.entry(
                "feet[0].measures.heelAngle=%s deg".formatted(plain(heelTo)),
                errors(heel, heelTo)));
  }

  private static double errors(double from, double to) {
    return millionth(Math.abs(to - from) / 2);
  }

  private static double millionth(double number) {
    return Math.rint(number * 1e6) / 1e6;
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  /** By what is set, how far off it is; to a millionth of a measuring error. */
  private static Map<String, Double> settings(FootContrasts one) {
    Map<String, Double> settings = new TreeMap<>();
    for (Contrast contrast : one.contrasts()) {
      settings.put(String.join(" ", contrast.settings()), millionth(contrast.errors()));
    }
    return settings;
  }

  /**
   * Bulbs of the heel 5 mm apart are sheared (O'Grady and Castelijns 2011). In sixteenths of an
   * inch from 44 and 41 mm: 46.04 mm is 1 13/16 in and 38.89 mm is 1 17/32, so 1 1/2 in it is.
   */
  @Test
  void in_inches_the_nearest_sixteenth_beyond_the_limit_is_told() {
    FootContrasts one =
        sparse("medialHeelHeight: 44, lateralHeelHeight: 41", "straight-bar", IN_INCHES);
    assertThat(settings(one).keySet())
        .contains(
            "feet[0].measures.medialHeelHeight=1 13/16 in",
            "feet[0].measures.lateralHeelHeight=1 1/2 in");
  }

  private static FootContrasts sparse(String measures, String wanted, Contrasts contrasts) {
    String foot = "horse: {ageYears: 8}\nfeet: [{limb: left-fore, measures: {%s}}]";
    return contrasts.of(Given.written(foot.formatted(measures)), 0, wanted, 20, done -> {});
  }

  @Test
  void where_nothing_was_looked_at_nothing_can_be_otherwise() {
    ReadResult.Good read = Given.written("horse: {ageYears: 8}\nfeet: [{limb: left-fore}]");
    FootContrasts one = IN_MM.of(read, 0, null, Contrasts.USUAL, done -> {});
    assertThat(one.looked()).isEmpty();
    assertThat(one.contrasts()).isEmpty();
    assertThat(one.more()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"horse: {weight: 470}, error.body-weight", "visit: {handling: quiet}, error.word"})
  void a_rule_base_without_measuring_errors_is_told_what_it_lacks(String seen, String limit) {
    var read = Given.written(seen + "\nfeet: [{limb: left-fore}]");
    assertThatThrownBy(() -> Observations.of(read.assessment(), 0, Map.of()))
        .isInstanceOf(MissingFromRulebook.class)
        .hasMessage("the rule base has no limit " + limit + " for such a foot");
  }

  @Test
  void a_foot_far_from_every_limit_has_no_contrast() {
    FootContrasts one = sparse("toeLength: 84, heelLength: 40", null, IN_MM);
    assertThat(one.looked()).hasSize(2);
    assertThat(one.contrasts()).isEmpty();
    assertThat(one.reach()).isInfinite();
  }

  @Test
  void what_is_so_already_needs_no_contrast() {
    ReadResult.Good read = Given.read(Shipped.EXERCISES.resolve("sound-hunter-reset.yaml"));
    FootContrasts one = IN_MM.of(read, 0, "nail-on", Contrasts.USUAL, done -> {});
    assertThat(one.goal().kind()).isEqualTo(ContrastGoal.Kind.REACHED);
    assertThat(one.contrasts()).isEmpty();
  }

  @Test
  void where_first_choice_is_out_of_reach_what_opens_the_technique_is_told() {
    FootContrasts one = sparse("toeAngle: 50, heelAngle: 46", "nail-on", IN_MM);
    assertThat(one.goal()).isEqualTo(new ContrastGoal(ContrastGoal.Kind.USABLE, "nail-on"));
  }

  @Test
  void the_kind_of_care_is_told_from_calls_and_bars() {
    Path file = Shipped.EXERCISES.resolve("showjumper-torn-side.yaml");
    FootContrasts one = all(file, IN_MM, 20).get(0);
    assertThat(care(one, "horse.laminitisGrade=1")).isEqualTo(CautionShift.MORE);
    assertThat(care(one, "feet[0].measures.toeAngle=53 deg")).isEqualTo(CautionShift.OTHER);
    assertThat(care(one, "feet[0].wall[2].to=66 mm", "feet[0].wall[3].from=66 mm"))
        .isEqualTo(CautionShift.LESS);
  }

  private static CautionShift care(FootContrasts one, String... settings) {
    return one.contrasts().stream()
        .filter(contrast -> contrast.settings().equals(List.of(settings)))
        .findFirst()
        .orElseThrow()
        .care();
  }
}
