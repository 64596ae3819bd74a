package hornbook.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.plan.Jobs;
import hornbook.plan.Plan;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.report.advice.PageHead;
import hornbook.report.drawing.EdgeDrawing;
import hornbook.report.sheet.PlanJson;
import hornbook.report.sheet.PlanMarkdown;
import hornbook.report.sheet.PlanPhrases;
import hornbook.report.sheet.PlanRefusal;
import hornbook.report.sheet.PlanText;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.io.StringWriter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class PlanReportTest {
  private static final Pattern INSIDES =
      Pattern.compile("NaN|Infinity|\\{|}|hornbook\\.[a-z]+\\.|null\\b|_");

  private static Plan glued() throws IOException {
    return Jobs.plan(Jobs.exercise("showjumper-torn-side"), Technique.GLUE_ON, PlanWishes.NONE);
  }

  private static JsonNode json(Plan plan, Units units) throws IOException {
    StringWriter text = new StringWriter();
    PlanJson.write(plan, units, text);
    return new ObjectMapper().readTree(text.toString());
  }

  @Test
  void noSheetIsWiderThanTheScreenOrShowsTheProgramsInsides() throws IOException {
    for (Plan plan : Jobs.all(Jobs.ANYWAY.withAdd(8.0).withTargetRatio(2.5))) {
      for (Units units : Units.values()) {
        String text = PlanText.render(plan, units);
        String[] lines = text.split("\n");
        for (String line : lines) {
          assertThat(line.codePointCount(0, line.length())).as(line).isLessThanOrEqualTo(80);
          assertThat(INSIDES.matcher(line).find()).as(line).isFalse();
        }
        assertThat(text).contains(PageHead.SAFETY.substring(0, 40)).endsWith("\n");
      }
    }
  }

  /** Whatever number a sheet names, its ground stands at the end of it: in words and in JSON. */
  @Test
  void everyLimitThatASheetNamesIsListedWithItsGround() throws IOException {
    for (Plan plan : Jobs.all(Jobs.ANYWAY.withAdd(8.0))) {
      Set<Limit> named = new LinkedHashSet<>();
      plan.lines()
          .values()
          .forEach(
              lines -> lines.forEach(line -> line.figures().forEach(one -> collect(one, named))));
      plan.nails().forEach(nail -> collect(nail.exit(), named));
      plan.materials().forEach(one -> collect(one, named));
      plan.steps().forEach(step -> collect(step.minutes(), named));
      assertThat(plan.taken()).containsAll(named).doesNotHaveDuplicates();
    }
    Plan glued = glued();
    String text = PlanText.render(glued, Units.MM).replaceAll("\\s+", " ");
    JsonNode limits = json(glued, Units.MM).get("limits");
    assertThat(limits).hasSize(glued.taken().size());
    for (Limit limit : glued.taken()) {
      assertThat(text)
          .containsIgnoringCase(limit.label())
          .contains("(" + limit.basis().word() + ";")
          .contains("; " + glued.advice().rulebook().locator(limit) + ")");
      assertThat(limits.findValuesAsText("id")).contains(limit.id());
    }
  }

  private static void collect(Figure figure, Set<Limit> named) {
    if (figure.limit() != null) {
      named.add(figure.limit());
    }
    figure.parts().values().forEach(part -> collect(part, named));
  }

  @Test
  void theSheetIsInOrderOfWork() throws IOException {
    String text = PlanText.render(glued(), Units.MM);
    int last = -1;
    for (String heading :
        List.of(
            "TO HAND",
            "NOT MEASURED",
            "DRESS THE FOOT",
            "BEFORE YOU GO ON",
            "THE WALL FROM BELOW",
            "SHOE",
            "BUILD",
            "WHAT IT DOES TO THE FOOT",
            "CLOCK",
            "GROWTH AND NEXT VISIT",
            "FOR THE OWNER",
            "FOR THE VET",
            "WALKED AND TROTTED AFTERWARDS",
            "CAUTIONS",
            "WHERE THE NUMBERS COME FROM",
            "WHAT THEY REST ON",
            "SOURCES")) {
      int at = text.indexOf("=== " + heading + " ===");
      assertThat(at).as(heading).isGreaterThan(last);
      last = at;
    }
  }

  @Test
  void whatMakesTheSheetAskForTheVetStandsFirst() throws IOException {
    Advice advice = Jobs.exercise("showjumper-torn-side", "feet[0].lameness=4");
    String text =
        PlanText.render(Jobs.plan(advice, Technique.NAIL_ON_ADAPTED, PlanWishes.NONE), Units.MM);
    assertThat(text).contains("A VET DECIDES");
    assertThat(text.indexOf("A VET DECIDES")).isLessThan(text.indexOf("DRESS THE FOOT"));
    String despite =
        PlanText.render(
            Jobs.plan(advice, Technique.NAIL_ON, PlanWishes.NONE.withDespite("one day only")),
            Units.MM);
    assertThat(despite).contains("\"one day only\"").contains("Ruled out: ").contains("[N003]");
  }

  @Test
  void aDangerLeavesNothingButWhatToDoUntilTheVetComes() throws IOException {
    Plan plan =
        Jobs.plan(
            Jobs.exercise("showjumper-torn-side", "feet[0].signs.objectInPlace=true"),
            Technique.GLUE_ON,
            Jobs.ANYWAY);
    String text = PlanText.render(plan, Units.MM);
    assertThat(text)
        .contains("UNTIL THE VET COMES")
        .doesNotContain("DRESS")
        .doesNotContain("CLOCK");
    JsonNode json = json(plan, Units.MM);
    assertThat(json.get("untilTheVetComes").get(0).get("meanwhile").asText()).isNotEmpty();
    assertThat(json.get("nails")).isEmpty();
    assertThat(json.get("steps")).isEmpty();
    assertThat(json.get("footAfter").isNull()).isTrue();
    assertThat(PlanMarkdown.render(plan, Units.MM)).contains("Until the vet comes");
  }

  @Test
  void theJsonHasTheShapeThatWasPromised() throws IOException {
    Plan plan =
        Jobs.plan(
            Jobs.exercise("showjumper-torn-side"), Technique.CAST_WRAP, Jobs.ANYWAY.withAdd(6.0));
    JsonNode json = json(plan, Units.MM);
    assertThat(json.get("format").asText()).isEqualTo("hornbook-plan/1");
    assertThat(json.get("foot").asText()).isEqualTo("left-fore");
    assertThat(json.get("technique").asText()).isEqualTo("cast-wrap");
    JsonNode nail = json.get("nails").get(0);
    assertThat(nail.get("side").asText()).isEqualTo("medial");
    assertThat(nail.get("at").asDouble()).isEqualTo(plan.nails().get(0).at().value());
    assertThat(nail.get("exit").asDouble()).isEqualTo(19);
    assertThat(nail.get("unit").asText()).isEqualTo("mm");
    assertThat(json.get("footBefore").get("toeLength").asDouble()).isEqualTo(86);
    assertThat(json.get("footAfter").get("toeLength").asDouble()).isEqualTo(92);
    assertThat(json.get("footAfter").get("width").asDouble()).isEqualTo(132);
    assertThat(json.get("shoe").get("before").asText()).isEqualTo("2");
    assertThat(json.get("shoe").get("after").asText()).isEqualTo("3");
    for (JsonNode material : json.get("materials")) {
      assertThat(material.get("what").asText()).isNotEmpty();
      assertThat(material.get("amount").isNumber()).isTrue();
      assertThat(material.has("unit")).isTrue();
    }
    for (JsonNode step : json.get("steps")) {
      assertThat(step.get("says").asText()).isNotEmpty();
      assertThat(step.get("minutes")).hasSize(2);
      assertThat(step.get("minutes").get(0).asDouble())
          .isLessThanOrEqualTo(step.get("minutes").get(1).asDouble());
    }
    assertThat(json.get("growth").get("aboveNailExit").get("slow").asText())
        .isGreaterThan(json.get("growth").get("aboveNailExit").get("fast").asText());
    assertThat(json.get("nextVisit").asText()).isEqualTo("2026-05-09");
    assertThat(json.get("cautions")).isNotEmpty();
    assertThat(json.get("sources")).isNotEmpty();
    for (JsonNode number : json.get("numbers")) {
      assertThat(number.get("formula").asText()).doesNotContain("{");
      assertThat(number.get("basis").asText()).isNotEmpty();
    }
  }

  @Test
  void theJsonIsInTheUnitsAskedFor() throws IOException {
    JsonNode json =
        json(
            Jobs.plan(
                Jobs.exercise("showjumper-torn-side"),
                Technique.CAST_WRAP,
                Jobs.ANYWAY.withAdd(6.0)),
            Units.INCH);
    assertThat(json.get("units").asText()).isEqualTo("inch");
    assertThat(json.get("nails").get(0).get("unit").asText()).isEqualTo("in");
    assertThat(json.get("footBefore").get("toeLength").asDouble() * 25.4)
        .isCloseTo(86, within(0.01));
    assertThat(json.get("footBefore").get("toeAngle").asDouble()).isEqualTo(51);
    assertThat(json.get("materials").get(0).get("unit").asText()).isEqualTo("ft");
  }

  @Test
  void theEdgeIsDrawnWithNailsWhereTheyGo() throws IOException {
    Plan plan =
        Jobs.plan(
            Jobs.exercise("showjumper-torn-side"), Technique.NAIL_ON_ADAPTED, PlanWishes.NONE);
    List<String> drawing = EdgeDrawing.of(plan);
    String all = String.join("\n", drawing);
    assertThat(drawing.get(0)).contains("TOE");
    assertThat(all).contains("inner").contains("outer").contains("....").contains("broken away");
    assertThat(all.replaceAll("[^1]", "").length()).isGreaterThanOrEqualTo(2);
    assertThat(all.indexOf("inner")).isLessThan(all.indexOf("outer"));
    Plan right =
        Jobs.plan(Jobs.exercise("winter-cob-wet-and-cold"), Technique.GLUE_ON, PlanWishes.NONE);
    String mirrored = String.join("\n", EdgeDrawing.of(right));
    assertThat(mirrored.indexOf("outer")).isLessThan(mirrored.indexOf("inner"));
  }

  @Test
  void noDrawingIsMadeOfAFootThatWasNotMeasured() {
    Plan plan = Jobs.plan(Jobs.advise("feet: [{limb: left-fore}]"), Technique.NAIL_ON, Jobs.ANYWAY);
    assertThat(EdgeDrawing.of(plan)).isEmpty();
    assertThat(PlanText.render(plan, Units.MM)).contains("NOT MEASURED").contains("width");
  }

  @Test
  void markdownTellsTheSameAndTakesNothingForAMark() throws IOException {
    String page = PlanMarkdown.render(glued(), Units.MM);
    assertThat(page)
        .startsWith("# Hornbook job sheet: Tansy")
        .contains("```text")
        .contains("| --- |");
    for (String line : PlanText.render(glued(), Units.MM).split("\n")) {
      if (line.startsWith("=== ")) {
        String heading = line.replace("=", "").strip().toLowerCase(Locale.ROOT);
        assertThat(page.toLowerCase(Locale.ROOT)).contains("## " + heading);
      }
    }
  }

  @Test
  void aRefusalNamesWhatIsRuledOutAndByWhichRules() throws IOException {
    Plan plan =
        Jobs.plan(Jobs.exercise("showjumper-torn-side"), Technique.NAIL_ON, PlanWishes.NONE);
    assertThat(PlanRefusal.what(plan)).isEqualTo("left fore: a nailed shoe is ruled out");
    assertThat(PlanRefusal.why(plan, Units.MM)).isNotEmpty().allMatch(why -> why.endsWith("]"));
  }

  @Test
  void timesAreSpokenAsInTheYard() {
    assertThat(PlanPhrases.minutes(0, 3)).isEqualTo("up to 3 minutes");
    assertThat(PlanPhrases.minutes(4, 6)).isEqualTo("4 to 6 minutes");
    assertThat(PlanPhrases.minutes(0.5, 0.5)).isEqualTo("0.5 minutes");
    assertThat(PlanPhrases.minutes(1440, 1440)).isEqualTo("24 hours");
  }
}
