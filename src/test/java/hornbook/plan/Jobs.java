package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetLine;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.Technique;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Job sheets to look at, made with the shipped rule base. */
public final class Jobs {
  /** Wishes with which the advice's refusals do not stand in the way of what is looked at. */
  public static final PlanWishes ANYWAY = PlanWishes.NONE.withDespite("to see the sheet");

  /** The advice on exercises, as they come up. */
  private static final Map<Path, Advice> EXERCISES = new HashMap<>();

  private Jobs() {}

  /** The advice on an assessment written without its first line. */
  public static Advice advise(String assessment, String... settings) {
    return read("format: hornbook-assessment/1\n" + assessment, "a test", settings);
  }

  /** The advice on an exercise, some fields changed. */
  public static Advice exercise(String name, String... settings) throws IOException {
    Path file = Shipped.EXERCISES.resolve(name + ".yaml");
    return read(Files.readString(file), name, settings);
  }

  private static Advice read(String text, String name, String... settings) {
    List<Setting> set = Arrays.stream(settings).map(Setting::parse).toList();
    ReadResult read = AssessmentReader.read(text.getBytes(StandardCharsets.UTF_8), name, set);
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return Shipped.ADVISOR.advise(((ReadResult.Good) read).assessment());
  }

  public static Advice advise(Assessment assessment) {
    return Shipped.ADVISOR.advise(assessment);
  }

  /** The sheet for the first foot. */
  public static Plan plan(Advice advice, Technique technique, PlanWishes wishes) {
    return PlanMaker.plan(advice, advice.feet().get(0), technique, wishes);
  }

  /** A sound fore foot of these measures, written as {@code toeLength: 90}. */
  public static Plan measured(String measures, Technique technique, PlanWishes wishes) {
    return plan(
        advise(
            """
            kit: {shoe: {thickness: 10}}
            feet: [{limb: left-fore, measures: {%s}}]
            """
                .formatted(measures)),
        technique,
        wishes);
  }

  /** Every sheet of every exercise. */
  public static List<Plan> all(PlanWishes wishes) throws IOException {
    List<Plan> all = new ArrayList<>();
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      if (!EXERCISES.containsKey(file)) {
        EXERCISES.put(file, read(Files.readString(file), file.toString()));
      }
      Advice advice = EXERCISES.get(file);
      for (FootAdvice foot : advice.feet()) {
        for (Technique technique : Technique.values()) {
          all.add(PlanMaker.plan(advice, foot, technique, wishes));
        }
      }
    }
    return all;
  }

  /** The ids of the sentences of a part. */
  public static List<String> said(Plan plan, SheetPart part) {
    return plan.lines(part).stream().map(line -> line.instruction().id()).toList();
  }

  /** The ids of all sentences. */
  public static Set<String> said(Plan plan) {
    Set<String> said = new TreeSet<>();
    plan.lines().values().forEach(all -> all.forEach(line -> said.add(line.instruction().id())));
    plan.steps().forEach(step -> said.add(step.says().instruction().id()));
    return said;
  }

  /** The number that fills a hole of a sentence. */
  public static Figure number(Plan plan, String instruction, String hole) {
    Optional<SheetLine> line =
        plan.lines().values().stream()
            .flatMap(List::stream)
            .filter(one -> one.instruction().id().equals(instruction))
            .findFirst();
    assertThat(line).as(instruction).isPresent();
    return (Figure) line.get().holes().get(hole);
  }

  /** When a step of the clock comes or how long it takes. */
  public static Figure minutes(Plan plan, String step) {
    return plan.steps().stream()
        .filter(one -> one.says().instruction().id().equals("step." + step))
        .findFirst()
        .orElseThrow()
        .minutes();
  }

  /** The number reckoned under this name. */
  public static Figure reckoned(Plan plan, String label) {
    return plan.reckoned().stream()
        .filter(one -> one.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + label));
  }
}
