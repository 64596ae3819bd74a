package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The job sheet, as the shell sees it. */
class PlanIT {
  /** What one side of A4 holds, set small. */
  private static final int ONE_PAGE = 85;

  @Test
  void in_brief_it_is_one_page_with_its_provenance_last() {
    for (String[] job :
        new String[][] {
          {"showjumper-torn-side", "glue-on"},
          {"showjumper-torn-side", "nail-on-adapted"},
          {"sound-hunter-reset", "nail-on"}
        }) {
      String sheet = exercise(job[0]);
      String brief = Program.run("plan", sheet, "--technique", job[1], "--brief").done().out();
      String whole = Program.run("plan", sheet, "--technique", job[1]).done().out();
      assertThat(brief.lines()).as(job[0]).hasSizeLessThanOrEqualTo(ONE_PAGE);
      assertThat(brief).containsSubsequence("CAUTIONS", "LEFT OUT HERE", "WHERE THE NUMBERS COME");
      String end = brief.substring(brief.indexOf("=== WHERE THE NUMBERS"));
      assertThat(end.lines().skip(1)).noneMatch(line -> line.startsWith("==="));
      assertThat(first(brief)).isEqualTo(first(whole));
    }
  }

  /** What has to be known before the first cut is never shortened. */
  private static String first(String sheet) {
    int from = sheet.indexOf("=== FIRST ===");
    return from < 0 ? "" : sheet.substring(from, sheet.indexOf("===", from + 14)).strip();
  }

  @Test
  void in_brief_is_for_reading() {
    String[] json = {"plan", exercise("showjumper-torn-side"), "--technique", "glue-on"};
    String[] command = {json[0], json[1], json[2], json[3], "--brief", "--format", "json"};
    assertThat(Program.run(command).refused(2).err()).contains("--brief is for a page to read");
  }

  private static final String TORN = exercise("showjumper-torn-side");
  private static final String TWO_FEET = exercise("long-toe-under-run-heels");

  /** A low foot whose numbers can be reckoned in the head. */
  private static final String LOW =
      """
      format: hornbook-assessment/1
      horse: {name: Bracken, ageYears: 9, weight: 500 kg}
      kit: {shoe: {thickness: 10 mm}, adhesive: urethane}
      feet:
        - limb: left-fore
          measures:
            {toeLength: 90 mm, heelLength: 30 mm, toeAngle: 48 deg, bearingLength: 100 mm}
      """;

  @TempDir Path folder;

  private static Program.Run plan(String file, String technique, String... more) {
    List<String> arguments = new ArrayList<>(List.of("plan", file, "--technique", technique));
    arguments.addAll(Arrays.asList(more));
    return Program.once(arguments.toArray(String[]::new));
  }

  private static String words(String page) {
    return page.replaceAll("\\s+", " ");
  }

  private static void fitsTheScreen(String page) {
    assertThat(page.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    assertThat(page).doesNotContain("\u001b", "NaN", "null", "{");
  }

  @ParameterizedTest
  @CsvSource({
    "leave-unshod, foal-trim, edge rounded",
    "leave-open, white-line-disease-at-rest, Nothing goes on or into the open place",
    "nail-on, draught-hind-toe-crack, Before the first nail",
    "nail-on-adapted, heavy-horse-torn-hind, Before the first nail",
    "glue-on, showjumper-torn-side, Bond the shoe to sound wall",
    "cast-wrap, broodmare-lost-quarter, Open the wrap at the heels with a V",
    "prosthetic-wall, racehorse-both-sides-broken, rebuild to the old line of the wall"
  })
  void every_technique_has_a_sheet_in_order_of_work(String technique, String file, String own) {
    String page = plan(exercise(file), technique).done().out();
    fitsTheScreen(page);
    assertThat(page)
        .startsWith("Hornbook job sheet: ")
        .contains("not a diagnosis")
        .containsSubsequence(
            "=== DRESS THE FOOT",
            "=== BEFORE YOU GO ON",
            words(page).contains("- No nails") ? "=== THE WALL FROM BELOW" : "=== NAILS",
            "=== WHAT IT DOES TO THE FOOT",
            "=== CLOCK",
            "=== GROWTH AND NEXT VISIT",
            "=== FOR THE OWNER",
            "=== FOR THE VET",
            "=== WALKED AND TROTTED AFTERWARDS",
            "=== WHERE THE NUMBERS COME FROM",
            "=== WHAT THEY REST ON",
            "=== SOURCES");
    assertThat(words(page)).contains(own);
    String owner = page.substring(page.indexOf("=== FOR THE OWNER"), page.indexOf("=== FOR THE V"));
    assertThat(owner.lines().filter(line -> line.startsWith("- "))).hasSize(10);
  }

  @Test
  void what_the_advice_rules_out_is_refused_with_its_reasons() {
    Path sheet = folder.resolve("sheet.json");
    Program.Run run = plan(TORN, "nail-on", "--format", "json", "-o", sheet.toString());
    assertThat(run.refused(1).err())
        .contains("left fore: a nailed shoe is ruled out", "room for 1 nail, 2 needed. [N003]")
        .contains("--despite");
    assertThat(sheet).doesNotExist();
  }

  @Test
  void a_reason_given_is_printed_on_the_sheet() {
    String why = "one walk to the horse box";
    String page = plan(TORN, "nail-on", "--despite", why).done().out();
    assertThat(words(page))
        .contains("a nailed shoe (ruled out)", "against the advice: \"" + why + "\"")
        .contains("Ruled out: Not enough sound wall for nails in the weaker branch");
  }

  @Test
  void until_the_vet_comes_there_is_nothing_else_to_do() {
    String file = exercise("nail-in-the-frog");
    Program.Run run = plan(file, "leave-open", "--despite", "it can wait").ended(1);
    assertThat(run.err()).isEmpty();
    fitsTheScreen(run.out());
    assertThat(run.out())
        .contains("=== THE VET NOW", "=== UNTIL THE VET COMES, THIS AND NOTHING ELSE", "[R002]")
        .doesNotContain("=== DRESS", "=== NAILS", "=== BUILD", "=== CLOCK", "=== FOR THE OWNER");
    JsonNode json = plan(file, "glue-on", "--format", "json").ended(1).json();
    assertThat(json.path("untilTheVetComes")).isNotEmpty();
    assertThat(json.path("untilTheVetComes"))
        .allMatch(one -> !one.path("meanwhile").asText().isBlank());
    assertThat(json.path("nails")).isEmpty();
    assertThat(json.path("steps")).isEmpty();
    assertThat(json.path("materials")).isEmpty();
  }

  @Test
  void a_technique_nobody_knows_is_answered_with_the_nearest() {
    assertThat(plan(TORN, "rwap").refused(2).err())
        .contains("there is no technique \"rwap\"", "prosthetic-wall");
    assertThat(plan(TORN, "gluon").refused(2).err()).contains("nearest: glue-on");
    assertThat(plan(TORN, "wrap").done().out()).contains("casting tape round the wall");
  }

  @Test
  void a_technique_and_where_there_are_two_a_foot_have_to_be_named() {
    assertThat(Program.run("plan", TORN).refused(2).err())
        .contains("--technique is missing", "glue-on");
    assertThat(plan(TWO_FEET, "leave-unshod").refused(2).err())
        .contains("several feet", "--foot left-fore", "--foot right-fore");
    String right = plan(TWO_FEET, "leave-unshod", "--foot", "right-fore").done().out();

    assertThat(right).contains("RIGHT FORE").doesNotContain("LEFT FORE");
  }

  @Test
  void what_was_not_measured_is_asked_for_and_the_rest_is_worked_out() {
    String page = plan(exercise("half-seen-foot"), "glue-on").done().out();
    fitsTheScreen(page);
    assertThat(words(page))
        .contains("=== NOT MEASURED", "Toe angle (feet[0].measures.toeAngle). Front wall to the")
        .contains("Web width (kit.shoe.webWidth). Inner to outer edge. For: adhesive in hand.")
        .contains("how high it runs was not measured", "not everything was looked at");
    assertThat(page).containsPattern("toe length +not measured +not measured");
    assertThat(page).containsPattern("width +126 mm +126 mm");
  }

  @Test
  void fields_are_set_for_one_run() {
    JsonNode json =
        plan(TORN, "glue-on", "--format", "json", "--set", "kit.adhesive=urethane").done().json();
    assertThat(json.path("cautions").findValuesAsText("rule")).doesNotContain("M001");
    JsonNode acrylic = plan(TORN, "glue-on", "--format", "json").done().json();
    assertThat(acrylic.path("cautions").findValuesAsText("rule")).contains("M001");
  }

  /** By arithmetic: (90 + 10) : (30 + 10) is 2.5; the other way round 100 : 40 less 10 is 3. */
  @Test
  void a_proportion_is_reached_and_left_again() {
    String low = Written.file(folder, "low.yaml", LOW);
    JsonNode built =
        plan(low, "cast-wrap", "--despite", "to see", "--add", "10mm", "--format", "json")
            .done()
            .json();
    assertThat(built.at("/footBefore/toeHeelRatio").asDouble()).isEqualTo(3);
    assertThat(built.at("/footAfter/toeHeelRatio").asDouble()).isEqualTo(2.5);
    assertThat(built.at("/footAfter/toeAngle").asDouble()).isEqualTo(48);

    String back =
        words(
            plan(
                    low,
                    "cast-wrap",
                    "--despite",
                    "to see",
                    "--target-ratio",
                    "3",
                    "--set",
                    "feet[0].measures.toeLength=100 mm",
                    "--set",
                    "feet[0].measures.heelLength=40 mm")
                .done()
                .out());
    assertThat(back)
        .contains("For 3 to 1: 10 mm off at toe and heels alike")
        .contains("this moves the proportion alone");
  }

  /** By trigonometry: 100 mm x tan 3 degrees is 5.24 mm; an angle asked for is the angle got. */
  @Test
  void an_angle_is_reached_by_wedge_and_by_depth() {
    String low = Written.file(folder, "low.yaml", LOW);
    String wedge = "--wedge=3deg";
    JsonNode wedged =
        plan(low, "nail-on", "--despite", "to see", wedge, "--format", "json").done().json();
    assertThat(wedged.at("/footAfter/toeAngle").asDouble()).isCloseTo(51, within(1e-6));
    assertThat(reckoned(wedged, "lift of the wedge at the heels")).isCloseTo(5.24, within(0.005));
    JsonNode turned =
        plan(low, "cast-wrap", "--despite", "to see", "--target-angle", "50deg", "--format", "json")
            .done()
            .json();
    assertThat(turned.at("/footAfter/toeAngle").asDouble()).isCloseTo(50, within(1e-6));
    assertThat(turned.at("/footAfter/toeLength").asDouble()).isEqualTo(90);
    assertThat(turned.toString()).contains("never reaches an angle: it moves the proportion alone");
  }

  private static double reckoned(JsonNode sheet, String what) {
    for (JsonNode number : sheet.path("numbers")) {
      if (number.path("what").asText().equals(what)) {
        return number.path("value").asDouble();
      }
    }
    throw new AssertionError("no " + what);
  }

  /** Ayzenberg and others 2018 dipped tape at 9, 22 and 36 C: 50 C is not in their table. */
  @Test
  void water_beyond_the_table_is_told() {
    assertThat(words(plan(TORN, "cast-wrap", "--dip", "50C").done().out()))
        .contains("in water of 50 °C the time is not known", "Cool the water to 36 °C or less")
        .doesNotContain("from wetting")
        .contains("Heat: not measured with such water.");
  }

  @Test
  void lengths_in_inches_all_over() {
    String page = plan(TORN, "cast-wrap", "--units", "inch").done().out();
    String work = page.substring(0, page.indexOf("=== WHAT THEY REST ON"));
    assertThat(work).contains(" in", " ft", " oz", "°F").doesNotContain(" mm", "°C", " kg");
    JsonNode json = plan(TORN, "cast-wrap", "--units", "inch", "--format", "json").done().json();
    assertThat(json.path("units").asText()).isEqualTo("inch");
    assertThat(json.at("/nails/0/unit").asText()).isEqualTo("in");
    assertThat(json.at("/footBefore/toeLength").asDouble() * 25.4).isCloseTo(86, within(1e-3));
  }

  @Test
  void the_json_has_the_shape_that_was_promised_and_adds_up() {
    JsonNode json = plan(TORN, "cast-wrap", "--add", "6mm", "--format", "json").done().json();
    assertThat(json.path("format").asText()).isEqualTo("hornbook-plan/1");
    assertThat(json.path("foot").asText()).isEqualTo("left-fore");
    assertThat(json.path("technique").asText()).isEqualTo("cast-wrap");
    assertThat(json.path("nails")).isNotEmpty();
    for (JsonNode nail : json.path("nails")) {
      assertThat(nail.path("side").asText()).isIn("medial", "lateral");
      assertThat(nail.path("at").isNumber() && nail.path("exit").isNumber()).isTrue();
      assertThat(nail.path("unit").asText()).isEqualTo("mm");
    }
    for (String when : List.of("footBefore", "footAfter")) {
      JsonNode foot = json.path(when);
      for (String one : List.of("toeLength", "heelLength", "toeHeelRatio", "toeAngle", "width")) {
        assertThat(foot.path(one).isNumber()).as(when + " " + one).isTrue();
      }
      assertThat(foot.path("toeHeelRatio").asDouble())
          .isCloseTo(
              foot.path("toeLength").asDouble() / foot.path("heelLength").asDouble(), within(1e-5));
    }
    assertThat(json.at("/footAfter/toeLength").asDouble()).isEqualTo(86 + 6);
    assertThat(json.at("/footAfter/width").asDouble()).isEqualTo(124 + 2 * 4);
    assertThat(json.at("/shoe/before").asText()).isEqualTo("2");
    assertThat(json.at("/shoe/after").asText()).isEqualTo("3");
    double driven = 0;
    for (JsonNode material : json.path("materials")) {
      assertThat(material.path("what").isTextual() && material.path("unit").isTextual()).isTrue();
      assertThat(material.path("amount").asDouble()).isPositive();
      driven =
          material.path("what").asText().equals("nails")
              ? material.path("amount").asDouble()
              : driven;
    }
    assertThat(driven).isEqualTo(json.path("nails").size());
    assertThat(json.path("steps")).isNotEmpty();
    for (JsonNode step : json.path("steps")) {
      assertThat(step.path("says").asText()).isNotBlank();
      assertThat(step.path("minutes")).hasSize(2);
      assertThat(step.at("/minutes/0").asDouble())
          .isLessThanOrEqualTo(step.at("/minutes/1").asDouble());
    }
    JsonNode above = json.at("/growth/aboveNailExit");
    LocalDate visit = LocalDate.of(2026, 4, 18);
    LocalDate mean = LocalDate.parse(above.path("mean").asText());
    assertThat(mean).isAfter(visit).isAfter(LocalDate.parse(above.path("fast").asText()));
    assertThat(mean).isBefore(LocalDate.parse(above.path("slow").asText()));
    assertThat(LocalDate.parse(json.path("nextVisit").asText())).isEqualTo(visit.plusDays(21));
    assertThat(json.path("cautions")).isNotEmpty().allMatch(one -> one.hasNonNull("says"));
    assertThat(json.path("sources")).isNotEmpty().allMatch(JsonNode::isTextual);
  }

  @Test
  void every_number_of_the_json_has_formula_ground_and_source() {
    JsonNode json = plan(TORN, "glue-on", "--format", "json").done().json();
    assertThat(json.path("numbers")).isNotEmpty();
    for (JsonNode number : json.path("numbers")) {
      assertThat(number.path("formula").asText()).isNotBlank();
      assertThat(number.path("basis").asText()).isNotBlank();
      assertThat(number.path("sources").isArray()).isTrue();
    }
    assertThat(json.path("limits")).isNotEmpty();
    for (JsonNode limit : json.path("limits")) {
      assertThat(limit.path("value").isNumber()).isTrue();
      assertThat(limit.path("basis").asText())
          .isIn("published", "quoted", "derived", "practice", "memory");
      assertThat(limit.path("source").asText()).isNotBlank();
      assertThat(limit.path("locator").asText()).isNotBlank();
    }
  }

  @Test
  void markdown_has_the_same_parts() {
    String text = plan(TORN, "glue-on").done().out();
    String page = plan(TORN, "glue-on", "--format", "markdown").done().out();
    assertThat(page).startsWith("# Hornbook job sheet: Tansy").contains("```text", "| --- |");
    text.lines()
        .filter(line -> line.startsWith("=== "))
        .forEach(
            line -> assertThat(page).containsIgnoringCase("## " + line.replace("=", "").strip()));
  }

  @Test
  void the_sheet_goes_to_a_file() {
    Path sheet = folder.resolve("sheet.md");
    Program.Run run = plan(TORN, "glue-on", "--format", "markdown", "-o", sheet.toString()).done();
    assertThat(run.out()).isEmpty();
    assertThat(sheet)
        .content()
        .isEqualTo(plan(TORN, "glue-on", "--format", "markdown").done().out());
  }

  @Test
  void a_local_practice_stands_on_the_sheet() {
    String yard =
        Written.file(
            folder,
            "yard.yaml",
            """
            format: hornbook-practice/1
            name: Hill Yard
            by: the head farrier
            date: 2026-03-14
            limits:
              - {id: hairline.most, value: 12 mm, reason: "the hairline here is torn by brush"}
            """);
    String page = plan(TORN, "glue-on", "--practice", yard).done().out();
    assertThat(words(page)).contains("LOCAL PRACTICE", "Hill Yard", "12 mm in place of 10 mm");
  }
}
