package hornbook.plan.time;

import static hornbook.plan.sheet.ClockStep.Counted.FROM_MIXING;
import static hornbook.plan.sheet.SheetPart.CLOCK;

import hornbook.assessment.Adhesive;
import hornbook.assessment.WallCrack;
import hornbook.assessment.word.CrackPlace;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;
import hornbook.plan.work.Building;
import java.util.List;

/** When an adhesive can be worked, stood on and nailed beside, by its kind and its warmth. */
final class AdhesiveClock {
  private final SheetDraft draft;
  private final Clock clock;

  AdhesiveClock(SheetDraft draft, Clock clock) {
    this.draft = draft;
    this.clock = clock;
  }

  /**
   * @param thickness of what is built; null where nothing is
   * @param finishing the handwork once it has set
   */
  void write(Figure thickness, Runnable finishing) {
    Adhesive adhesive = Building.adhesive(draft);
    if (adhesive == Adhesive.ACRYLIC) {
      acrylic(thickness, finishing);
    } else if (adhesive == Adhesive.URETHANE) {
      urethane(thickness, finishing);
    }
    if (thickness != null) {
      draft.say(
          CLOCK,
          "clock.heat",
          Placeholders.of("layer", draft.limit("repair.layer"))
              .and("bone", draft.limit("heat.bone")));
    }
  }

  /** A toe crack shuts under weight, so a patch over it sets with the foot held up. */
  private String setting() {
    List<WallCrack> cracks = draft.assessed().cracks();
    boolean held =
        draft.technique() == Technique.PROSTHETIC_WALL
            && cracks != null
            && cracks.stream().anyMatch(one -> one.place() == CrackPlace.TOE);
    return held ? "step.set-held" : "step.set";
  }

  private String laying() {
    return draft.technique() == Technique.PROSTHETIC_WALL ? "step.lay-first" : "step.lay-on";
  }

  private void acrylic(Figure thickness, Runnable finishing) {
    Figure kept = draft.given().airTemperature();
    SettingTable table =
        new SettingTable(
            "setting time of the acrylic", List.of(row("cool"), row("middle"), row("warm")));
    if (kept.known() && !table.covers(kept)) {
      unmeasured(kept);
      finishing.run();
      return;
    }
    Figure set = table.at(kept);
    Figure share = draft.limit("acrylic.working");
    clock.step(
        laying(),
        Figure.between(
            "time to lay the acrylic on",
            0,
            set.low() * share.value() / 100,
            "minutes",
            "up to {share} of the setting time {set}",
            FormulaParts.of("share", share).and("set", set)),
        FROM_MIXING);
    clock.step(
        setting(), SettingTable.spread(draft, set, "time in which the acrylic sets"), FROM_MIXING);
    more(set, thickness);
    finishing.run();
    if (set.known()) {
      draft.say(CLOCK, "clock.acrylic", Placeholders.of("set", set).and("kept", kept));
    }
    clock.step(
        "step.weight", longer("acrylic.first", set, "time until weight may come on"), FROM_MIXING);
    clock.step(
        "step.full", longer("acrylic.full", set, "time until it is fully hard"), FROM_MIXING);
  }

  /** Outside the temperatures of the table nobody measured how long it takes: a sample tells. */
  private void unmeasured(Figure kept) {
    draft.say(
        CLOCK,
        "clock.acrylic-beyond",
        Placeholders.of("kept", kept)
            .and("cool", draft.limit("acrylic.cool.kept"))
            .and("warm", draft.limit("acrylic.warm.kept"))
            .and("share", draft.limit("acrylic.working"))
            .and("first", draft.limit("acrylic.first"))
            .and("full", draft.limit("acrylic.full")));
    if (setting().equals("step.set-held")) {
      draft.say(CLOCK, "clock.held");
    }
  }

  /** Each further layer is a mix of its own, and sets before the next. */
  private void more(Figure set, Figure thickness) {
    if (thickness == null || !thickness.known() || !set.known()) {
      return;
    }
    double layers = Math.ceil(thickness.value() / draft.limit("repair.layer").value());
    for (int layer = 1; layer < layers; layer++) {
      clock.step(
          "step.lay-next",
          SettingTable.spread(draft, set, "time in which the next layer sets"),
          FROM_MIXING);
    }
  }

  private SettingTable.Row row(String name) {
    return new SettingTable.Row(
        draft.limit("acrylic." + name + ".kept"), draft.limit("acrylic." + name + ".set"));
  }

  private void urethane(Figure thickness, Runnable finishing) {
    Figure grip = draft.limit("urethane.grip");
    clock.step(
        laying(),
        Figure.between(
            "time to lay the urethane on",
            0,
            grip.value(),
            "minutes",
            "up to {grip}",
            FormulaParts.of("grip", grip)),
        FROM_MIXING);
    Figure least = draft.limit("urethane.set-least");
    Figure most = draft.limit("urethane.set-most");
    Figure set =
        Figure.between(
            "time in which the urethane sets",
            least.value(),
            most.value(),
            "minutes",
            "{least} to {most}",
            FormulaParts.of("least", least).and("most", most));
    clock.step(setting(), set, FROM_MIXING);
    more(set, thickness);
    finishing.run();
    clock.step(
        "step.weight",
        Figure.reckoned(
            "time until weight may come on",
            most.value(),
            "minutes",
            "when it is set, {set} at the latest",
            FormulaParts.of("set", most)),
        FROM_MIXING);
    Figure full = draft.limit("urethane.full");
    clock.step("step.full", full, FROM_MIXING);
    draft.say(CLOCK, "clock.urethane");
  }

  private Figure longer(String kept, Figure set, String label) {
    return SettingTable.scaled(draft, kept, "acrylic.cool.set", set, label);
  }
}
