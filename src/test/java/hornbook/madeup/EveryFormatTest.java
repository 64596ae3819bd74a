package hornbook.madeup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Assessment;
import hornbook.assessment.WallState;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.report.advice.AdviceHtml;
import hornbook.report.advice.AdviceJson;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.TextOptions;
import hornbook.report.sheet.PlanHtml;
import hornbook.report.sheet.PlanJson;
import hornbook.report.sheet.PlanMarkdown;
import hornbook.report.sheet.PlanText;
import hornbook.report.study.ConfidenceJson;
import hornbook.report.study.ConfidenceText;
import hornbook.report.study.ContrastJson;
import hornbook.report.study.ContrastText;
import hornbook.report.study.ExplanationJson;
import hornbook.report.study.ExplanationText;
import hornbook.report.words.Detail;
import hornbook.rules.Shipped;
import hornbook.study.confidence.Confidence;
import hornbook.study.confidence.ConfidenceAnalysis;
import hornbook.study.contrast.Contrasts;
import hornbook.study.contrast.FootContrasts;
import hornbook.study.explain.Explainer;
import hornbook.study.explain.Explanation;
import hornbook.study.explain.SubjectNames;
import hornbook.study.generate.GeneratedFeet;
import hornbook.study.rulecase.RuleCase;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every command about a foot, in every form it has in turn, on feet at the ends of what can be
 * measured: no page fails, and none prints a number that is none. {@code -Dhornbook.madeup=100000}
 * makes more.
 */
class EveryFormatTest {
  private static final int FEET = Horses.HOW_MANY;
  private static final Pattern MINUS_NOTHING = Pattern.compile("-0(?![.\\d])");
  private static final List<String> EXPLAINED =
      List.of("nail-on", "bearing-pressure-ratio", "sound-share", "weeks-to-nailable", "U014");

  @Test
  void everyPageOfEveryFootCanBeWritten() throws Exception {
    List<Assessment> cases =
        Shipped.ruleCases().values().stream().map(RuleCase::assessment).toList();
    GeneratedFeet paper = new GeneratedFeet(Shipped.BOOK, cases, 20);
    IntStream.range(0, FEET)
        .parallel()
        .forEach(
            number -> {
              boolean drawn = number % 3 == 0;
              Assessment foot = drawn ? paper.foot(number) : EdgeFeet.foot(number);
              assertThatCode(() -> check(foot, number))
                  .as("foot %d: %s", number, foot)
                  .doesNotThrowAnyException();
            });
  }

  /** The sheet of a horse's last foot, for the techniques and in the forms in turn. */
  @Test
  void theJobSheetsOfHorsesCanBeWritten() throws Exception {
    AtomicInteger written = new AtomicInteger();
    new Horses(71)
        .each(
            horse -> {
              Advice advice = Shipped.ADVISOR.judge(horse);
              FootAdvice foot = advice.feet().get(advice.feet().size() - 1);
              Technique technique = Horses.technique(horse);
              Units units = horse.feet().size() % 2 == 0 ? Units.MM : Units.INCH;
              assertThatCode(() -> form(advice, foot, technique, units, horse.hashCode()))
                  .as("%s", horse)
                  .doesNotThrowAnyException();
              written.incrementAndGet();
            });
    assertThat(written.get()).isEqualTo(Horses.HOW_MANY);
  }

  @ParameterizedTest
  @EnumSource(WallState.class)
  void aWallOfOneStateAllRoundIsContrasted(WallState state) throws IOException {
    String row = "{side: %s, from: 0 mm, to: 175 mm, state: %s, height: 6 mm}";
    String text =
        "format: hornbook-assessment/1\n"
            + "feet: [{limb: left-fore, measures: {bearingLength: 130 mm, width: 124 mm}, wall: ["
            + row.formatted("medial", state.word())
            + ", "
            + row.formatted("lateral", state.word())
            + "]}]";
    ReadResult read =
        AssessmentReader.read(text.getBytes(StandardCharsets.UTF_8), "foot.yaml", List.of());
    for (Units units : Units.values()) {
      List<FootContrasts> all =
          List.of(
              new Contrasts(Shipped.ADVISOR, units)
                  .of((ReadResult.Good) read, 0, null, 3, done -> {}));
      hasOnlyNumbers(ContrastText.render(all, Shipped.BOOK, usual(units)));
      hasOnlyNumbers(ContrastJson.of(all, Shipped.BOOK, units));
    }
  }

  /** Text of every foot; of the longer forms one in turn, of what takes longer still a share. */
  private static void check(Assessment assessment, int number) throws IOException {
    Advice advice = Shipped.ADVISOR.advise(assessment);
    Units units = number / 4 % 2 == 0 ? Units.MM : Units.INCH;
    Detail[] details = Detail.values();
    Detail detail = details[number / 9 % details.length];
    hasOnlyNumbers(AdviceText.render(advice, usual(units).with(detail)));
    switch (number / 3 % 3) {
      case 0 -> hasOnlyNumbers(AdviceHtml.render(advice, units));
      case 1 -> hasOnlyNumbers(AdviceMarkdown.render(advice, units));
      default -> {
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        AdviceJson.write(advice, units, json);
        hasOnlyNumbers(json.toString(StandardCharsets.UTF_8));
      }
    }
    FootAdvice foot = advice.feet().get(0);
    if (number % 2 == 0) {
      sheet(advice, foot, Technique.values()[number / 2 % Technique.values().length], units);
    }
    if (number % 7 == 0) {
      explanation(advice, foot, EXPLAINED.get(number % EXPLAINED.size()), units);
    }
    if (number % 100 == 0) {
      sure(assessment, units);
    }
  }

  private static void sheet(Advice advice, FootAdvice foot, Technique technique, Units units)
      throws IOException {
    Plan plan = PlanMaker.plan(advice, foot, technique, PlanWishes.NONE.withDespite("to see it"));
    hasOnlyNumbers(PlanText.render(plan, units));
    hasOnlyNumbers(PlanMarkdown.render(plan, units));
    hasOnlyNumbers(PlanHtml.render(plan, units, plan.workable() ? Detail.FULL : Detail.BRIEF));
    StringWriter json = new StringWriter();
    PlanJson.write(plan, units, json);
    hasOnlyNumbers(json.toString());
  }

  private static void form(
      Advice advice, FootAdvice foot, Technique technique, Units units, int turn)
      throws IOException {
    Plan plan = PlanMaker.plan(advice, foot, technique, PlanWishes.NONE.withDespite("to see it"));
    StringWriter json = new StringWriter();
    switch (Math.floorMod(turn, 5)) {
      case 0 -> hasOnlyNumbers(PlanText.render(plan, units));
      case 1 -> hasOnlyNumbers(PlanMarkdown.render(plan, units));
      case 2 -> hasOnlyNumbers(PlanHtml.render(plan, units));
      case 3 -> hasOnlyNumbers(PlanHtml.render(plan, units, Detail.BRIEF));
      default -> {
        PlanJson.write(plan, units, json);
        hasOnlyNumbers(json.toString());
      }
    }
  }

  private static void explanation(Advice advice, FootAdvice foot, String of, Units units)
      throws IOException {
    Explainer explainer = new Explainer(advice, foot);
    List<Explanation> all = new ArrayList<>();
    new SubjectNames(Shipped.BOOK)
        .named(of)
        .ifPresent(
            subject -> {
              all.add(explainer.why(subject));
              all.add(explainer.whyNot(subject));
            });
    assertThat(all).hasSize(2);
    for (Detail detail : List.of(Detail.USUAL, Detail.FULL)) {
      hasOnlyNumbers(ExplanationText.render(all, Shipped.BOOK, usual(units).with(detail)));
    }
    hasOnlyNumbers(ExplanationJson.of(all, Shipped.BOOK, units));
  }

  private static void sure(Assessment assessment, Units units) throws IOException {
    List<Confidence> sure =
        List.of(new ConfidenceAnalysis(Shipped.ADVISOR, 1).of(assessment, 0, 50, 1, done -> {}));
    hasOnlyNumbers(ConfidenceText.render(sure, Shipped.BOOK, usual(units)));
    hasOnlyNumbers(ConfidenceJson.of(sure, Shipped.BOOK, units));
  }

  private static TextOptions usual(Units units) {
    return new TextOptions(units, Detail.USUAL, false, TextOptions.USUAL_WIDTH);
  }

  private static void hasOnlyNumbers(String page) {
    assertThat(page).doesNotContain("NaN", "Infinity", "∞");
    if (page.contains("-0")) {
      assertThat(page).doesNotContainPattern(MINUS_NOTHING);
    }
  }
}
