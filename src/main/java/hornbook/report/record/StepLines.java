package hornbook.report.record;

import hornbook.assessment.WallStretch;
import hornbook.foot.number.Unknown;
import hornbook.record.DefectGrowth;
import hornbook.record.Departures;
import hornbook.record.VisitStep;
import hornbook.report.words.Amounts;
import hornbook.report.words.Numbers;
import hornbook.report.words.PlainWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/** What became of a foot from one visit to the next, in sentences. */
final class StepLines {
  private final Amounts amounts;
  private final UnaryOperator<String> labels;

  StepLines(Amounts amounts, UnaryOperator<String> labels) {
    this.amounts = amounts;
    this.labels = labels;
  }

  List<String> of(VisitStep step) {
    List<String> lines = new ArrayList<>();
    if (step.days() >= 0) {
      lines.add(Numbers.counted((int) step.days(), "day") + " between the visits.");
    } else {
      lines.add("A day of visit was not noted, so there is no forecast.");
    }
    step.defects().forEach(defect -> lines.add(growth(defect)));
    for (WallStretch fresh : step.fresh()) {
      String side = fresh.side() == null ? "" : PlainWords.of(fresh.side().word()) + " ";
      lines.add(
          "New since the visit before: "
              + PlainWords.of(fresh.state().word())
              + " "
              + side
              + "wall"
              + (fresh.height() == null ? "" : ", " + height(fresh.height()) + " high")
              + ".");
    }
    kept(step, lines);
    lame(step, lines);
    return lines;
  }

  private String growth(DefectGrowth defect) {
    String place =
        PlainWords.of(defect.side().word())
            + " wall, "
            + amounts.span(defect.from(), defect.to(), "mm")
            + " from the toe: ";
    if (defect.course() == DefectGrowth.Course.NOT_MEASURED) {
      return place + "its height was not measured at both visits, so growth cannot be checked.";
    }
    String was = "the defect was " + height(defect.before()) + " high";
    String forecast = "forecast " + Numbers.spanned(rounded(defect.low()), height(defect.high()));
    String is = Unknown.is(defect.after()) ? "" : ", is " + height(defect.after());
    return place + was + is + "; " + forecast + ". " + course(defect.course());
  }

  private static String course(DefectGrowth.Course course) {
    return switch (course) {
      case AS_FORECAST -> "The wall grows down as forecast.";
      case SLOWER ->
          "It has grown down less than slow growth would. Keep load off this wall and find out why.";
      case FASTER ->
          "It is lower than fast growth explains. Was it cut away, or measured in another place?";
      case CLIMBED ->
          "It is higher than before: the defect is running up the wall. Show it to the vet.";
      case GROWN_OUT -> "It is no longer on the wall map: it has grown out.";
      case GONE_EARLY ->
          "It is no longer on the wall map, sooner than growth explains. Was it cut away, or mapped differently?";
      case NOT_MEASURED -> "";
    };
  }

  private void kept(VisitStep step, List<String> lines) {
    String chose = step.before().chose();
    boolean bare = chose == null || chose.equals(Departures.NOTHING) || chose.startsWith("leave-");
    if (bare) {
      return;
    }
    String what = labels.apply(chose);
    if (step.stayedOn() == null) {
      lines.add("Whether " + what + " stayed on was not noted.");
    } else {
      lines.add(what + (step.stayedOn() ? " stayed on." : " came off."));
    }
  }

  private static void lame(VisitStep step, List<String> lines) {
    Integer before = step.before().foot().lameness();
    Integer after = step.after().foot().lameness();
    if (before == null || after == null) {
      lines.add("Lameness was not graded at both visits.");
      return;
    }
    String change = after < before ? "better" : after > before ? "worse" : "the same";
    lines.add("Lameness: grade " + before + " before, grade " + after + " after: " + change + ".");
  }

  private String height(double mm) {
    return HistoryPage.rounded(mm, amounts);
  }

  private String rounded(double mm) {
    String text = height(mm);
    return text.substring(0, text.lastIndexOf(' '));
  }

  /** The forecast for the tallest defect; unknown without one. */
  static double low(VisitStep step) {
    DefectGrowth tallest = tallest(step);
    return tallest == null ? Unknown.NUMBER : tallest.low();
  }

  static double high(VisitStep step) {
    DefectGrowth tallest = tallest(step);
    return tallest == null ? Unknown.NUMBER : tallest.high();
  }

  private static DefectGrowth tallest(VisitStep step) {
    return step == null
        ? null
        : step.defects().stream()
            .filter(one -> !Unknown.is(one.before()))
            .max(Comparator.comparingDouble(DefectGrowth::before))
            .orElse(null);
  }
}
