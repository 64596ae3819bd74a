package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A learner's reasoning compared with the rule base by the packaged program. */
class CritiqueIT {
  private static final String JUMPER = "showjumper-torn-side";

  private static final String ANSWER =
      """
      format: hornbook-answer/1
      by: "14"
      feet:
        - limb: left-fore
          findings: [not-nailable, low-heels]
          vet: none
          vetFor: []
          technique: leave-unshod
          because: [N003, K001]
          ruledOut: {nail-on: [N003], cast-wrap: []}
          supports: []
          ask: [hoofHeat]
      """;

  @TempDir Path folder;

  private Program.Run critique(String about, String answer, String... more) {
    String file = Written.file(folder, "mine.yaml", answer);
    List<String> arguments = new ArrayList<>(List.of("critique", about, file));
    arguments.addAll(List.of(more));
    return Program.here().from(folder).with(arguments.toArray(String[]::new));
  }

  /** A page with its lines joined, as it is read. */
  private static String read(Program.Run run) {
    return run.done().out().replaceAll("\\s+", " ");
  }

  private JsonNode points(String about, String answer) {
    return critique(about, answer, "--format", "json").done().json().at("/feet/0/points");
  }

  private static String verdict(JsonNode points, String about, String subject) {
    for (JsonNode point : points) {
      if (point.get("about").asText().equals(about)
          && point.get("subject").asText().equals(subject)) {
        return point.get("verdict").asText();
      }
    }
    return "not there";
  }

  @Test
  void every_verdict_is_told_with_a_question_rules_and_sources() {
    JsonNode points = points(JUMPER, ANSWER);
    assertThat(verdict(points, "technique", "leave-unshod")).isEqualTo("defensible");
    assertThat(verdict(points, "reason", "N003")).isEqualTo("agreed");
    assertThat(verdict(points, "reason", "K001")).isEqualTo("unfounded");
    assertThat(verdict(points, "finding", "low-heels")).isEqualTo("unfounded");
    assertThat(verdict(points, "ruled-out", "cast-wrap")).isEqualTo("defensible");
    assertThat(verdict(points, "question", "feet[0].signs.hoofHeat")).isEqualTo("unfounded");
    for (JsonNode point : points) {
      boolean agreed = point.get("verdict").asText().equals("agreed");
      assertThat(point.get("asks").asText().isEmpty()).as(point.toString()).isEqualTo(agreed);
    }
    assertThat(points.get(0).get("rules")).isNotNull();
  }

  @Test
  void danger_comes_first_and_is_counted() {
    JsonNode json =
        critique(JUMPER, ANSWER.replace("leave-unshod", "nail-on"), "--format", "json")
            .done()
            .json();
    assertThat(json.get("dangerous").asInt()).isEqualTo(1);
    JsonNode first = json.at("/feet/0/points/0");
    assertThat(first.get("verdict").asText()).isEqualTo("unfounded-dangerous");
    assertThat(first.get("rules").get(0).asText()).isEqualTo("N003");
    assertThat(first.get("says").asText()).contains("1 nail");
  }

  @Test
  void what_can_be_defended_says_what_would_make_it_first() {
    String page = read(critique(JUMPER, ANSWER));
    assertThat(page)
        .contains("It can be defended. First choice is a glued shoe.")
        .contains("None of the rules you named")
        .contains("It would be first choice with: ")
        .containsSubsequence("Right, or can be defended", "Does not hold on this foot", "Missed");
  }

  @Test
  void the_right_choice_for_a_reason_that_does_not_hold_is_told_apart() {
    String glued = ANSWER.replace("leave-unshod", "glue-on").replace("[N003, K001]", "[K001]");
    assertThat(verdict(points(JUMPER, glued), "technique", "glue-on"))
        .isEqualTo("right-for-another-reason");
  }

  @Test
  void a_departure_is_weighed_but_not_against_a_call_for_the_vet() {
    String departs = ANSWER.replace("leave-unshod", "nail-on") + "    departs: \"he insists\"\n";
    assertThat(verdict(points(JUMPER, departs), "technique", "nail-on")).isEqualTo("defensible");
    assertThat(read(critique(JUMPER, departs))).contains("counts as a reason, not as wrong");
    assertThat(verdict(points("fat-pony-footsore-in-may", departs), "technique", "nail-on"))
        .isEqualTo("unfounded-dangerous");
  }

  @Test
  void siding_with_another_author_is_defensible() throws Exception {
    String text =
        Files.readString(Program.EXERCISES.resolve(JUMPER + ".yaml"))
            .replace(
                "teaching:\n",
                "  - {foot: left-fore, technique: nail-on, source: hunting-1895, says:"
                    + " \"Two nails on one side have held.\"}\nteaching:\n");
    String own = Written.file(folder, "own.yaml", text);
    String nailed = ANSWER.replace("leave-unshod", "nail-on");
    assertThat(verdict(points(own, nailed), "technique", "nail-on")).isEqualTo("defensible");
    assertThat(read(critique(own, nailed)))
        .contains("Authors differ: Hunting 1895", "Two nails on one side have held.");
  }

  @Test
  void leaving_out_what_an_author_leaves_out_is_siding_with_him() {
    String crack = "quarter-crack-from-the-coronet";
    String barred =
        ANSWER
            .replace("limb: left-fore", "limb: right-fore")
            .replace("supports: []", "supports: [straight-bar]");
    JsonNode points = points(crack, barred.replace("leave-unshod", "nail-on-adapted"));
    assertThat(verdict(points, "support", "float-wall")).isEqualTo("defensible");
    assertThat(read(critique(crack, barred))).contains("Authors differ: Hunting 1895");
  }

  @Test
  void a_field_can_be_changed_for_the_run_and_the_foot_is_then_judged_as_it_stands() {
    String[] whole = {"--set", "feet[left-fore].wall[2].state=sound"};
    JsonNode changed =
        critique(JUMPER, ANSWER, whole[0], whole[1], "--format", "json").done().json();
    assertThat(changed.get("case").isNull()).isTrue();
    assertThat(verdict(changed.at("/feet/0/points"), "ruled-out", "nail-on"))
        .isEqualTo("unfounded");
    assertThat(critique(JUMPER, ANSWER, "--set", "feet[0].walll=sound").refused(65).err())
        .contains("feet[0].walll", "nearest  wall");
  }

  @Test
  void a_foot_of_ones_own_needs_no_model_answer() throws Exception {
    String own =
        """
        format: hornbook-assessment/1
        horse: {name: Own, ageYears: 9, work: sport}
        feet:
          - limb: left-fore
            lameness: 4
            signs: {digitalPulse: bounding, hoofHeat: true, puncture: frog, objectInPlace: true}
        """;
    String file = Written.file(folder, "own.yaml", own);
    JsonNode json = critique(file, ANSWER, "--format", "json").done().json();
    assertThat(json.get("case").isNull()).isTrue();
    assertThat(json.get("dangerous").asInt()).isPositive();
    assertThat(verdict(json.at("/feet/0/points"), "vet", "none")).isEqualTo("missed-dangerous");
  }

  @Test
  void all_forms_say_the_same_and_are_whole() {
    assertThat(critique(JUMPER, ANSWER, "--format", "html").done().out())
        .startsWith("<!DOCTYPE html>")
        .contains("<h3 class=\"right\">", "</html>");
    assertThat(critique(JUMPER, ANSWER, "--format", "markdown").done().out())
        .startsWith("# Critique: ")
        .contains("It can be defended.");
  }

  @Test
  void a_bad_answer_is_refused_with_every_fault() {
    Program.Run run =
        critique(
            JUMPER,
            ANSWER.replace("leave-unshod", "leave-unshodd").replace("vet: none", "vet: soon"));
    assertThat(run.refused(65).err())
        .contains("mine.yaml:6", "mine.yaml:8", "nearest", "leave-unshod", "2 faults");
    assertThat(critique(JUMPER, "case: foal-trim\n" + ANSWER).refused(65).err())
        .contains("foal-trim", JUMPER);
    assertThat(Program.run("critique", JUMPER, "nowhere.yaml").refused(66).err())
        .contains("there is no file nowhere.yaml");
  }
}
