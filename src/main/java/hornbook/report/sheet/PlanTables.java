package hornbook.report.sheet;

import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.plan.Plan;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.ClockStep;
import hornbook.plan.sheet.PlannedNail;
import hornbook.report.sheet.PlanSection.Table;
import hornbook.report.words.PlainWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The tables of a job sheet. */
final class PlanTables {
  private final Plan plan;
  private final PlanPhrases phrases;

  PlanTables(Plan plan, PlanPhrases phrases) {
    this.plan = plan;
    this.phrases = phrases;
  }

  Table materials() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("what", "how much"));
    plan.materials().forEach(one -> rows.add(List.of(one.label(), phrases.of(one))));
    return new Table(rows);
  }

  /** Places are along the edge from the middle of the toe. */
  Table nails() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("nail", "from mid-toe", "leaves the wall", "in the stretch"));
    Map<Side, Integer> count = new LinkedHashMap<>();
    for (PlannedNail nail : plan.nails()) {
      int number = count.merge(nail.side(), 1, Integer::sum);
      rows.add(
          List.of(
              PlainWords.of(nail.side().word()) + " " + number + (nail.behind() ? " *" : ""),
              phrases.of(nail.at()),
              phrases.of(nail.exit()) + " up",
              stretch(nail.stretch())));
    }
    return new Table(rows);
  }

  private String stretch(WallStretch stretch) {
    return PlainWords.of(stretch.state().word())
        + ", "
        + phrases.phrases().amounts().span(stretch.from(), stretch.to(), "mm");
  }

  Table foot() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "before", "after"));
    List<Figure> before = plan.before().all();
    List<Figure> after = plan.after().all();
    for (int i = 0; i < before.size(); i++) {
      rows.add(List.of(before.get(i).label(), phrases.of(before.get(i)), phrases.of(after.get(i))));
    }
    return new Table(rows);
  }

  Table clock() {
    return clock(plan.steps());
  }

  /** The steps that material and not the hand sets the time of. */
  Table setting() {
    return clock(
        plan.steps().stream().filter(step -> step.counted() != ClockStep.Counted.LASTS).toList());
  }

  private Table clock(List<ClockStep> steps) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("time", "step"));
    for (ClockStep step : steps) {
      String from =
          switch (step.counted()) {
            case LASTS -> "";
            case FROM_WETTING -> " from wetting";
            case FROM_MIXING -> " from mixing";
          };
      rows.add(List.of(phrases.of(step.minutes()) + from, phrases.says(step.says())));
    }
    return new Table(rows);
  }
}
