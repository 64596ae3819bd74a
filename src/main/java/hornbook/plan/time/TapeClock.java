package hornbook.plan.time;

import static hornbook.plan.sheet.ClockStep.Counted.FROM_WETTING;
import static hornbook.plan.sheet.SheetPart.CLOCK;

import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.SheetDraft;
import java.util.List;

/** When casting tape can be worked, nailed and stood on, by the water it was dipped in. */
final class TapeClock {
  private final SheetDraft draft;
  private final Clock clock;

  TapeClock(SheetDraft draft, Clock clock) {
    this.draft = draft;
    this.clock = clock;
  }

  /**
   * @param thickness of the wrap
   * @param finishing the handwork once it has set
   * @param nails whether a shoe is nailed on to it
   */
  void write(Figure thickness, Runnable finishing, boolean nails) {
    Figure dip = dip();
    SettingTable table = table("setting time of the tape", "set");
    if (table.covers(dip)) {
      measured(dip, table, finishing, nails);
    } else {
      unmeasured(dip, finishing, nails);
    }
    heat(dip, thickness);
  }

  private void measured(Figure dip, SettingTable table, Runnable finishing, boolean nails) {
    draft.say(CLOCK, "clock.dip", "dip", dip);
    Figure set = table.at(dip);
    Figure working = share(draft.limit("tape.working"), set);
    clock.step("step.wind", working, FROM_WETTING);
    clock.step(
        "step.tape-set",
        SettingTable.spread(draft, set, "time in which the tape sets"),
        FROM_WETTING);
    clock.step("step.tape-nail", nail(set), FROM_WETTING);
    finishing.run();
    shoe(nails);
    clock.step(
        "step.weight", longer("tape.weight", set, "time until weight may come on"), FROM_WETTING);
    clock.step("step.full", longer("tape.full", set, "time until it is fully hard"), FROM_WETTING);
    draft.say(
        CLOCK,
        "clock.tape",
        Placeholders.of("set", set).and("dip", dip).and("room", draft.limit("tape.room")));
    air();
  }

  /** In colder or warmer water nobody measured how long it takes: a sample tells, not a sum. */
  private void unmeasured(Figure dip, Runnable finishing, boolean nails) {
    Figure cold = draft.limit("tape.cold.dip");
    Figure warm = draft.limit("tape.warm.dip");
    boolean colder = dip.value() < cold.value();
    draft.say(
        CLOCK,
        colder ? "clock.tape-colder" : "clock.tape-warmer",
        Placeholders.of("dip", dip)
            .and("cold", cold)
            .and("warm", warm)
            .and("share", draft.limit("tape.working"))
            .and("weight", draft.limit("tape.weight"))
            .and("full", draft.limit("tape.full")));
    finishing.run();
    shoe(nails);
  }

  private void shoe(boolean nails) {
    if (nails) {
      clock.hand("fit");
      clock.hand("nail");
    }
  }

  /**
   * The water asked for; else the middle of the table, which the sheet then asks the farrier for.
   */
  private Figure dip() {
    Double wished = draft.wishes().dip();
    return wished == null
        ? draft.limit("tape.middle.dip")
        : Figure.measured("dip water", wished, "C", null);
  }

  private SettingTable table(String what, String column) {
    return new SettingTable(
        what, List.of(row("cold", column), row("middle", column), row("warm", column)));
  }

  private SettingTable.Row row(String name, String column) {
    return new SettingTable.Row(
        draft.limit("tape." + name + ".dip"), draft.limit("tape." + name + "." + column));
  }

  /** From wetting to the share of the setting time in which it can be worked. */
  private static Figure share(Figure share, Figure set) {
    return Figure.between(
        "time to wind and smooth the tape",
        0,
        set.low() * share.value() / 100,
        "minutes",
        "up to {share} of the setting time {set}",
        FormulaParts.of("share", share).and("set", set));
  }

  private Figure nail(Figure set) {
    Figure least = draft.limit("tape.nail-least");
    Figure most = draft.limit("tape.nail-most");
    Figure middle = draft.limit("tape.middle.set");
    return Figure.between(
        "soonest nail in the wrap",
        least.value() * set.low() / middle.value(),
        most.value() * set.high() / middle.value(),
        "minutes",
        "{least} to {most}, as the setting time {set} is to {middle}",
        FormulaParts.of("least", least).and("most", most).and("set", set).and("middle", middle));
  }

  private void heat(Figure dip, Figure thickness) {
    SettingTable table = table("peak heat in the tape", "peak");
    Figure tested = draft.limit("tape.layers");
    Figure skin = draft.limit("heat.skin");
    if (table.covers(dip)) {
      draft.say(
          CLOCK,
          "clock.tape-heat",
          Placeholders.of("peak", table.at(dip)).and("layers", tested).and("skin", skin));
    } else if (dip.value() < draft.limit("tape.cold.dip").value()) {
      draft.say(
          CLOCK,
          "clock.tape-heat-cold",
          Placeholders.of("dip", draft.limit("tape.cold.dip"))
              .and("peak", draft.limit("tape.cold.peak"))
              .and("layers", tested)
              .and("skin", skin));
    } else {
      draft.say(
          CLOCK, "clock.tape-heat-beyond", Placeholders.of("layers", tested).and("skin", skin));
    }
    double layers = Math.ceil(thickness.value() / draft.given().layerThickness().value());
    if (layers > tested.value()) {
      draft.say(CLOCK, "clock.tape-thick", "layers", tested);
    }
  }

  private void air() {
    Figure air = draft.given().airTemperature();
    Figure room = draft.limit("tape.room");
    if (!draft.known(air) || air.value() == room.value()) {
      return;
    }
    draft.say(
        CLOCK,
        air.value() < room.value() ? "clock.tape-air" : "clock.tape-air-warm",
        Placeholders.of("air", air).and("room", room));
  }

  private Figure longer(String kept, Figure set, String label) {
    return SettingTable.scaled(draft, kept, "tape.middle.set", set, label);
  }
}
