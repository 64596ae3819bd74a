package hornbook.report.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import hornbook.rules.Shipped;
import hornbook.study.contrast.CautionShift;
import hornbook.study.contrast.Contrast;
import hornbook.study.contrast.Contrasts;
import hornbook.study.contrast.FootContrasts;
import hornbook.study.contrast.OutcomeChange;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Contrasts as pages: nobody may read one as a licence. */
class ContrastTextTest {
  private static FootContrasts contrasted(String exercise, String wanted, int most, Units units)
      throws Exception {
    Path file = Shipped.EXERCISES.resolve(exercise + ".yaml");
    ReadResult read = AssessmentReader.read(Files.readAllBytes(file), exercise, List.of());
    Contrasts contrasts = new Contrasts(Shipped.ADVISOR, units);
    return contrasts.of((ReadResult.Good) read, 0, wanted, most, done -> {});
  }

  private static String text(FootContrasts one, Units units) {
    TextOptions options = new TextOptions(units, Detail.USUAL, false, TextOptions.USUAL_WIDTH);
    return ContrastText.render(List.of(one), Shipped.BOOK, options);
  }

  /** As one line, to look for sentences in. */
  private static String flowing(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void what_lowers_care_is_set_apart_and_each_of_it_says_only_if_truly_so() throws Exception {
    FootContrasts one = contrasted("showjumper-torn-side", null, 20, Units.MM);
    String text = text(one, Units.MM);
    long less = one.contrasts().stream().filter(c -> c.care() == CautionShift.LESS).count();
    assertThat(less).isPositive();
    assertThat(text.split("only if truly ", -1)).hasSize((int) less + 1);
    assertThat(flowing(text))
        .contains(
            "LESS CAUTIOUS, and only valid if the horse really measures so.",
            "no target and no permission")
        .contains("Measure again only to be right, never to get there")
        .contains("use the safer one", "not a diagnosis");
    assertThat(text.indexOf("only if truly ")).isGreaterThan(text.indexOf("LESS CAUTIOUS"));
    assertThat(text.indexOf("MORE CAUTIOUS")).isBetween(0, text.indexOf("LESS CAUTIOUS"));
  }

  @Test
  void a_call_for_the_vet_that_would_fall_away_stands_all_the_same() throws Exception {
    FootContrasts one = contrasted("nail-in-the-frog", null, 20, Units.MM);
    long eased =
        one.contrasts().stream()
            .filter(c -> c.gives().stream().anyMatch(OutcomeChange::easesCall))
            .count();
    assertThat(eased).isPositive();
    assertThat(
            one.contrasts().stream()
                .filter(c -> c.gives().stream().anyMatch(OutcomeChange::easesCall)))
        .allMatch(contrast -> contrast.care() == CautionShift.LESS);
    String[] parts =
        flowing(text(one, Units.MM)).split("The call stands until the vet has said", -1);
    assertThat(parts).hasSize((int) eased + 1);
  }

  @Test
  void a_change_is_told_in_plain_words_with_its_size_its_outcome_and_its_settings()
      throws Exception {
    String text = text(contrasted("showjumper-torn-side", null, 8, Units.MM), Units.MM);
    assertThat(flowing(text))
        .contains(
            "end of the broken-away outer wall from 20 to 68 mm: 66 mm, not 68 mm"
                + " (1 measuring error)")
        .contains("-> first choice: a shoe nailed only where the wall is sound, was a glued shoe")
        .contains("-> a nailed shoe: workable, was ruled out")
        .contains("-> the vet today for acute laminitis")
        .contains("measuring error of a length: ± 2 mm (derived)")
        .contains("a sign seen differently counts as 2 measuring errors (memory)");
    assertThat(text)
        .contains(
            "    --set \"feet[0].wall[2].to=66 mm\"\n    --set \"feet[0].wall[3].from=66 mm\"");
  }

  @Test
  void pages_fit_the_screen_and_are_in_the_units_of_the_reader() throws Exception {
    for (Units units : Units.values()) {
      String text = text(contrasted("racehorse-both-sides-broken", null, 30, units), units);
      assertThat(text.lines())
          .allMatch(line -> line.length() <= TextOptions.USUAL_WIDTH || line.contains("--set"));
      assertThat(text).doesNotContain(units == Units.MM ? " in\"" : " mm");
    }
  }

  @Test
  void that_nothing_does_is_said_in_so_many_words() throws Exception {
    FootContrasts none = contrasted("fat-pony-footsore-in-may", "nail-on", 8, Units.MM);
    assertThat(none.contrasts()).isEmpty();
    assertThat(flowing(text(none, Units.MM)))
        .startsWith("Left fore: what would make this the first choice, or open it at least: a nail")
        .contains("Nothing within a horse's possible range does", "no two or three together")
        .contains("hornbook why-not FILE nail-on");
    FootContrasts already = contrasted("sound-hunter-reset", "nail-on", 8, Units.MM);
    assertThat(flowing(text(already, Units.MM)))
        .contains("Right fore: the first choice already: a nailed shoe. ");
  }

  @Test
  void what_was_not_looked_at_is_a_question_and_what_is_fixed_is_named() throws Exception {
    assertThat(flowing(text(contrasted("half-seen-foot", null, 8, Units.MM), Units.MM)))
        .contains("What was not looked at is a question, not a change. There are")
        .contains("Left as they are: name, age in years,", "limb, ", "and what is in the van.");
  }

  @Test
  void json_has_what_is_set_and_what_it_gives() throws Exception {
    FootContrasts one = contrasted("showjumper-torn-side", null, 8, Units.MM);
    JsonNode json =
        new ObjectMapper().readTree(ContrastJson.of(List.of(one), Shipped.BOOK, Units.MM));
    assertThat(json.path("format").asText()).isEqualTo("hornbook-contrast/1");
    assertThat(json.path("limb").asText()).isEqualTo("left-fore");
    assertThat(json.path("firstChoice").asText()).isEqualTo("glue-on");
    assertThat(json.path("to").isNull()).isTrue();
    assertThat(json.path("changes")).hasSize(8);
    for (int at = 0; at < 8; at++) {
      Contrast contrast = one.contrasts().get(at);
      JsonNode change = json.path("changes").get(at);
      List<String> set = new ArrayList<>();
      change
          .path("set")
          .forEach(
              field -> set.add(field.path("field").asText() + "=" + field.path("to").asText()));
      assertThat(set).isEqualTo(contrast.settings());
      assertThat(change.path("set").get(0).path("from").asText()).isNotEmpty();
      assertThat(change.path("measuringErrors").doubleValue())
          .isCloseTo(contrast.errors(), within(1e-4));
      assertThat(change.path("gives")).hasSameSizeAs(contrast.gives());
      assertThat(change.path("care").asText()).isIn("more", "other", "less");
    }
    assertThat(json.path("changes").get(0).path("gives").get(0).toString())
        .isEqualTo("{\"support\":\"straight-bar\",\"from\":\"not-indicated\",\"to\":\"workable\"}");
    assertThat(json.path("errors").findValuesAsText("basis")).contains("memory");
  }
}
