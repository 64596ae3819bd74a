package hornbook.report.record;

import hornbook.assessment.Measures;
import hornbook.assessment.quantity.Units;
import hornbook.foot.number.Unknown;
import hornbook.record.FootHistory;
import hornbook.record.FootVisit;
import hornbook.record.History;
import hornbook.record.VisitStep;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** The feet of a horse over its visits as a page. */
public final class HistoryPage {
  private static final String MM = "mm";
  private static final String DEGREES = "deg";

  private final Amounts amounts;
  private final StepLines steps;
  private final VisitDays days = new VisitDays();

  private HistoryPage(Units units, UnaryOperator<String> labels) {
    this.amounts = new Amounts(units);
    this.steps = new StepLines(amounts, labels);
  }

  public static RecordPage of(History history, Units units, UnaryOperator<String> labels) {
    return new HistoryPage(units, labels).page(history);
  }

  private RecordPage page(History history) {
    List<RecordPart> parts = new ArrayList<>();
    for (FootHistory foot : history.feet()) {
      String limb = FieldNames.of(foot.limb());
      parts.add(visits(limb, foot));
      parts.add(RecordPart.of(limb + ": found", findings(foot)));
      for (VisitStep step : foot.steps()) {
        parts.add(
            RecordPart.of(
                limb + ": " + days.spoken(step.before()) + " to " + days.spoken(step.after()),
                steps.of(step)));
      }
      parts.add(RecordPart.charts(limb + ": over time", charts(foot)));
    }
    if (!history.unread().isEmpty()) {
      parts.add(
          RecordPart.of(
              "Not read",
              history.unread().stream()
                  .map(one -> "The assessment of entry " + one + " can no longer be read.")
                  .toList()));
    }
    return new RecordPage(
        "History: " + history.horse(),
        List.of(),
        parts,
        List.of(
            "Forecasts: slow and fast growth from the day of the visit before, for a"
                + " foot dressed back to its length. A change of toe length widens them."));
  }

  private RecordPart visits(String limb, FootHistory foot) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "visit",
            "entry",
            "lame",
            "toe",
            "heels",
            "toe angle",
            "heel angle",
            "defect",
            "chosen"));
    for (FootVisit visit : foot.visits()) {
      Measures measures = visit.foot().measures();
      Integer lameness = visit.foot().lameness();
      rows.add(
          List.of(
              days.brief(visit),
              Integer.toString(visit.entry().number()),
              lameness == null ? "?" : lameness.toString(),
              text(measures.toeLength(), MM),
              text(measures.heelLength(), MM),
              text(measures.toeAngle(), DEGREES),
              text(measures.heelAngle(), DEGREES),
              text(visit.tallestDefect(), MM),
              visit.chose() == null ? "" : visit.chose()));
    }
    return RecordPart.table(limb, rows);
  }

  private String text(Double value, String unit) {
    return value == null ? "?" : amounts.text(value, unit);
  }

  /** What came and went, visit by visit. */
  private List<String> findings(FootHistory foot) {
    List<String> lines = new ArrayList<>();
    List<String> before = null;
    for (FootVisit visit : foot.visits()) {
      List<String> now = visit.findings();
      String line = days.spoken(visit) + ": " + (now.isEmpty() ? "none" : String.join("; ", now));
      if (before != null) {
        List<String> gone = new ArrayList<>(before);
        gone.removeAll(now);
        line += gone.isEmpty() ? "" : ". No longer found: " + String.join("; ", gone);
      }
      lines.add(line + ".");
      before = now;
    }
    return lines;
  }

  private List<RecordChart> charts(FootHistory foot) {
    List<RecordChart> charts = new ArrayList<>();
    add(charts, "Tallest defect", MM, foot, FootVisit::tallestDefect, true);
    add(charts, "Toe length", MM, foot, visit -> visit.foot().measures().toeLength(), false);
    add(charts, "Heel length", MM, foot, visit -> visit.foot().measures().heelLength(), false);
    add(charts, "Toe angle", DEGREES, foot, visit -> visit.foot().measures().toeAngle(), false);
    add(
        charts,
        "Lameness",
        "grade",
        foot,
        visit -> visit.foot().lameness() == null ? null : visit.foot().lameness().doubleValue(),
        false);
    return charts;
  }

  private void add(
      List<RecordChart> charts,
      String title,
      String unit,
      FootHistory foot,
      Function<FootVisit, Double> of,
      boolean forecast) {
    List<RecordChart.Point> points = new ArrayList<>();
    int measured = 0;
    for (int i = 0; i < foot.visits().size(); i++) {
      FootVisit visit = foot.visits().get(i);
      Double value = of.apply(visit);
      measured += value == null ? 0 : 1;
      VisitStep step = forecast && i > 0 ? foot.steps().get(i - 1) : null;
      points.add(
          new RecordChart.Point(
              days.brief(visit),
              days.since(foot.visits().get(0), visit, i),
              value == null ? Unknown.NUMBER : in(value, unit),
              in(StepLines.low(step), unit),
              in(StepLines.high(step), unit)));
    }
    if (measured > 1) {
      charts.add(new RecordChart(title, amounts.amount(0, unit).unit(), points));
    }
  }

  private double in(double value, String unit) {
    return Unknown.is(value) ? value : amounts.amount(value, unit).value();
  }

  /** A number with its unit, no finer than it was measured. */
  static String rounded(double value, Amounts amounts) {
    Amounts.Amount amount = amounts.amount(value, MM);
    return amount.unit().equals(MM)
        ? Numbers.rounded(amount.value(), 0) + " mm"
        : amounts.text(value, MM);
  }
}
