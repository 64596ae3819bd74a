package hornbook.plan.time;

import hornbook.foot.GrowingOut;
import hornbook.foot.Growth;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.GrowthDates;
import hornbook.plan.sheet.SheetDraft;
import java.time.LocalDate;

/** When wall of a given height has grown down past a place, as dates and as visits. */
final class Outgrowing {
  private final SheetDraft draft;
  private final Figure interval;
  private final LocalDate date;

  /**
   * @param interval days from one visit to the next
   */
  Outgrowing(SheetDraft draft, Figure interval) {
    this.draft = draft;
    this.interval = interval;
    this.date = draft.assessment().visit().date();
  }

  /**
   * @param past height of the place above the ground; null for the ground itself
   * @param label what the days run until
   */
  GrowthDates dates(Figure height, Figure past, String label) {
    return new GrowthDates(
        days(height, past, "slow", label),
        days(height, past, "mean", label),
        days(height, past, "fast", label),
        date);
  }

  private Figure days(Figure height, Figure past, String pace, String label) {
    Figure rate = draft.limit("growth." + pace);
    double down = past == null ? 0 : past.value();
    FormulaParts parts = FormulaParts.of("height", height).and("rate", rate);
    if (past != null) {
      parts.and("past", past);
    }
    return Figure.reckoned(
        "days " + label + ", " + pace,
        Math.ceil(Growth.days(height.value(), down, rate.value())),
        "days",
        past == null ? "{height} / {rate}, rounded up" : "({height} - {past}) / {rate}, rounded up",
        parts);
  }

  /** The holes of a sentence about them; days where no day of the visit is known. */
  Placeholders told(GrowthDates dates, Figure height) {
    return Placeholders.of("fast", when(dates, dates.fast()))
        .and("mean", when(dates, dates.mean()))
        .and("slow", when(dates, dates.slow()))
        .and("visits", visits(dates))
        .and("height", height);
  }

  private static Placeholder when(GrowthDates dates, Figure days) {
    LocalDate on = dates.on(days);
    return on == null ? days : new Placeholder.On(on);
  }

  private Figure visits(GrowthDates dates) {
    return Figure.between(
        "visits until then",
        GrowingOut.visits(dates.fast().value(), interval.value()),
        GrowingOut.visits(dates.slow().value(), interval.value()),
        "",
        "{fast} to {slow}, every {interval}",
        FormulaParts.of("fast", dates.fast()).and("slow", dates.slow()).and("interval", interval));
  }
}
