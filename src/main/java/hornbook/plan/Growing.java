package hornbook.plan;

import static hornbook.plan.Part.GROWTH;

import hornbook.assessment.Stretch;
import hornbook.foot.GrowingOut;
import hornbook.foot.Growth;
import java.time.LocalDate;

/** When the defect has grown down, when to come again, and what should have grown by then. */
final class Growing {
  private final Draft draft;
  private final LocalDate date;
  private GrowthDates aboveNailExit;
  private GrowthDates ground;
  private Figure interval;

  Growing(Draft draft) {
    this.draft = draft;
    this.date = draft.assessment().visit().date();
  }

  /** Null where there is no defect with a height. */
  GrowthDates aboveNailExit() {
    return aboveNailExit;
  }

  GrowthDates ground() {
    return ground;
  }

  /** Days until the next visit. */
  Figure interval() {
    return interval;
  }

  /** The day of the next visit; null without a day of this one. */
  LocalDate nextVisit() {
    return GrowingOut.date(date, interval.value());
  }

  /**
   * @param behind whether nails stand behind the usual limit
   */
  void write(boolean behind) {
    interval = new Intervals(draft).shortest(behind);
    if (date == null) {
      draft.ask("visit.date", "days of the calendar in place of counts of days");
    }
    draft.say(GROWTH, "growth.next", "days", interval);
    draft.say(GROWTH, "growth.by-then", "grown", grown());
    draft.say(GROWTH, "growth.if-not");
    defect();
    if (draft.technique() == Technique.CAST_WRAP) {
      draft.say(GROWTH, "growth.wrap-off", "days", draft.limit("aftercare.wrap.longest"));
    }
  }

  private Figure grown() {
    Figure slow = draft.limit("growth.slow");
    Figure fast = draft.limit("growth.fast");
    return Figure.between(
        "horn grown by the next visit",
        Growth.in(interval.value(), slow.value()),
        Growth.in(interval.value(), fast.value()),
        "mm",
        "{days} at {slow} to {fast}",
        Parts.of("days", interval).and("slow", slow).and("fast", fast));
  }

  private void defect() {
    Stretch tallest = null;
    for (Stretch lost : new Walls(draft).lost()) {
      if (lost.height() == null) {
        draft.known(draft.given().height(lost));
      } else if (tallest == null || lost.height() > tallest.height()) {
        tallest = lost;
      }
    }
    if (tallest == null) {
      draft.say(GROWTH, "growth.no-defect");
      return;
    }
    Figure height = draft.given().height(tallest);
    Hole place = Walls.place(tallest);
    Figure exit = draft.limit("nails.exit.usual");
    aboveNailExit = dates(height, exit, "until the defect has passed the nail exits");
    ground = dates(height, null, "until the defect has reached the ground");
    String nailable = height.value() > exit.value() ? "growth.exit" : "growth.exit-passed";
    draft.say(GROWTH, nailable, told(aboveNailExit, height).and("place", place).and("exit", exit));
    draft.say(GROWTH, "growth.ground", told(ground, height).and("place", place));
  }

  private GrowthDates dates(Figure height, Figure past, String label) {
    return new GrowthDates(
        days(height, past, "slow", label),
        days(height, past, "mean", label),
        days(height, past, "fast", label),
        date);
  }

  private Figure days(Figure height, Figure past, String pace, String label) {
    Figure rate = draft.limit("growth." + pace);
    double down = past == null ? 0 : past.value();
    Parts parts = Parts.of("height", height).and("rate", rate);
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

  private Holes told(GrowthDates dates, Figure height) {
    return Holes.of("fast", when(dates, dates.fast()))
        .and("mean", when(dates, dates.mean()))
        .and("slow", when(dates, dates.slow()))
        .and("visits", visits(dates))
        .and("height", height);
  }

  private static Hole when(GrowthDates dates, Figure days) {
    LocalDate on = dates.on(days);
    return on == null ? days : new Hole.On(on);
  }

  private Figure visits(GrowthDates dates) {
    return Figure.between(
        "visits until then",
        GrowingOut.visits(dates.fast().value(), interval.value()),
        GrowingOut.visits(dates.slow().value(), interval.value()),
        "",
        "{fast} to {slow}, every {interval}",
        Parts.of("fast", dates.fast()).and("slow", dates.slow()).and("interval", interval));
  }
}
