package hornbook.plan.time;

import static hornbook.plan.sheet.SheetPart.GROWTH;

import hornbook.assessment.Care;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.CrackPlace;
import hornbook.assessment.word.CrackStart;
import hornbook.foot.GrowingOut;
import hornbook.foot.Growth;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.wall.WallSurvey;
import hornbook.plan.effect.WallHeight;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.nailing.NailNumbers;
import hornbook.plan.sheet.GrowthDates;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;
import java.time.LocalDate;
import java.util.List;

/** When the defect has grown down, when to come again, and what should have grown by then. */
public final class Growing {
  private final SheetDraft draft;
  private final LocalDate date;
  private GrowthDates aboveNailExit;
  private GrowthDates ground;
  private Figure interval;

  public Growing(SheetDraft draft) {
    this.draft = draft;
    this.date = draft.assessment().visit().date();
  }

  /** Null where there is no defect with a height. */
  public GrowthDates aboveNailExit() {
    return aboveNailExit;
  }

  public GrowthDates ground() {
    return ground;
  }

  /** Days until the next visit. */
  public Figure interval() {
    return interval;
  }

  /** The day of the next visit; null without a day of this one. */
  public LocalDate nextVisit() {
    return GrowingOut.date(date, interval.value());
  }

  /**
   * @param behind whether nails stand behind the usual limit
   */
  public void write(boolean behind) {
    interval = new Intervals(draft).shortest(behind);
    if (date == null) {
      draft.ask("visit.date", "days of the calendar in place of counts of days");
    }
    next("growth.next", interval);
    if (draft.technique().firstAid()) {
      return;
    }
    draft.say(GROWTH, "growth.by-then", "grown", grown());
    draft.say(GROWTH, "growth.if-not");
    measured();
    Outgrowing outgrowing = new Outgrowing(draft, interval);
    defect(outgrowing);
    cracks(outgrowing);
    if (draft.technique() == Technique.CAST_WRAP) {
      next("growth.wrap-off", draft.limit("aftercare.wrap.longest"));
    }
  }

  /** So many days, and where the day of the visit is known the day itself. */
  private void next(String line, Figure days) {
    LocalDate on = GrowingOut.date(date, days.value());
    if (on == null) {
      draft.say(GROWTH, line, "days", days);
    } else {
      draft.say(
          GROWTH, line + "-on", Placeholders.of("days", days).and("day", new Placeholder.On(on)));
    }
  }

  /** What this very foot has grown since its wall was lost, where somebody measured it. */
  private void measured() {
    Care care = draft.assessed().care();
    if (care.wallGoneDays() == null || care.wallGoneDays() == 0 || care.hornSince() == null) {
      return;
    }
    String path = draft.given().path("care.");
    Figure days =
        Figure.measured(
            "days since the wall was lost", care.wallGoneDays(), "days", path + "wallGoneDays");
    Figure horn =
        Figure.measured("horn grown since then", care.hornSince(), "mm", path + "hornSince");
    Figure rate =
        Figure.reckoned(
            "growth of this foot",
            horn.value() / days.value() * Growth.DAYS_IN_A_MONTH,
            "mm/month",
            "{horn} in {days}, a month being a twelfth of a year",
            FormulaParts.of("horn", horn).and("days", days));
    draft.say(
        GROWTH,
        rate.value() < draft.limit("growth.slow").value() ? "growth.slower" : "growth.measured",
        Placeholders.of("horn", horn)
            .and("days", days)
            .and("rate", rate)
            .and("slow", draft.limit("growth.slow"))
            .and("fast", draft.limit("growth.fast")));
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
        FormulaParts.of("days", interval).and("slow", slow).and("fast", fast));
  }

  /** The tallest loss; one whose height is not known may be taller, and is told. */
  private void defect(Outgrowing outgrowing) {
    WallStretch tallest = null;
    List<WallStretch> all = new WallStretches(draft).lost();
    for (WallStretch lost : all) {
      if (lost.height() == null) {
        draft.known(draft.given().height(lost));
        draft.say(GROWTH, "growth.height-unknown", "place", WallStretches.place(lost));
      } else if (tallest == null || lost.height() > tallest.height()) {
        tallest = lost;
      }
    }
    if (tallest != null) {
      grownOut(tallest, outgrowing);
    } else if (all.isEmpty()) {
      WallSurvey wall = draft.readings().wall();
      boolean whole = wall != null && wall.unmapped() == 0;
      draft.say(GROWTH, whole ? "growth.no-defect" : "growth.unmapped");
    }
  }

  private void grownOut(WallStretch tallest, Outgrowing outgrowing) {
    Figure height = draft.given().height(tallest);
    Placeholder place = WallStretches.place(tallest);
    Figure exit = new NailNumbers(draft).exit();
    aboveNailExit = outgrowing.dates(height, exit, "until the defect has passed the nail exits");
    ground = outgrowing.dates(height, null, "until the defect has reached the ground");
    String nailable = height.value() > exit.value() ? "growth.exit" : "growth.exit-passed";
    draft.say(
        GROWTH,
        nailable,
        outgrowing.told(aboveNailExit, height).and("place", place).and("exit", exit));
    draft.say(GROWTH, "growth.ground", outgrowing.told(ground, height).and("place", place));
  }

  /** A crack from the coronary band goes when the wall it is in has been renewed. */
  private void cracks(Outgrowing outgrowing) {
    List<WallCrack> cracks = draft.assessed().cracks();
    if (cracks == null) {
      return;
    }
    for (WallCrack crack : cracks) {
      boolean high = crack.starts() == CrackStart.CORONET || crack.starts() == CrackStart.FULL;
      if (high && crack.place() != null && crack.place() != CrackPlace.BAR) {
        crack(crack, outgrowing);
      }
    }
  }

  private void crack(WallCrack crack, Outgrowing outgrowing) {
    Figure height =
        switch (crack.place()) {
          case TOE -> draft.given().toeLength();
          case HEEL -> draft.given().heelLength();
          default -> WallHeight.at(draft, middle(crack.place()));
        };
    GrowthDates dates = outgrowing.dates(height, null, "until the crack has grown down");
    if (draft.known(height)) {
      draft.say(
          GROWTH,
          "growth.crack",
          outgrowing.told(dates, height).and("place", new Placeholder.Word(crack.place().word())));
    }
  }

  private double middle(CrackPlace place) {
    GroundOutline outline = draft.readings().outline();
    double share = draft.readings().limits().nailing().regions().middle(place);
    return outline == null ? Unknown.NUMBER : share * outline.edgeLength();
  }
}
