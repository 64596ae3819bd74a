package hornbook.plan.time;

import static hornbook.plan.sheet.ClockStep.Counted.LASTS;
import static hornbook.plan.sheet.SheetPart.CLOCK;

import hornbook.assessment.word.Shoeing;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.ClockStep;
import hornbook.plan.sheet.ClockStep.Counted;
import hornbook.plan.sheet.SheetDraft;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The work step by step, with minutes. */
public final class Clock {
  private final SheetDraft draft;
  private final List<ClockStep> steps = new ArrayList<>();

  public Clock(SheetDraft draft) {
    this.draft = draft;
  }

  public List<ClockStep> steps() {
    return List.copyOf(steps);
  }

  /** When it is fully hard; null where nothing sets, or it is not known. */
  public Figure full() {
    return steps.stream()
        .filter(step -> step.says().instruction().id().equals("step.full"))
        .map(ClockStep::minutes)
        .findFirst()
        .orElse(null);
  }

  /**
   * @param nails whether nails are driven
   * @param thickness of what is built; null where nothing is
   */
  public void write(boolean nails, Figure thickness) {
    Shoeing shoeing = draft.assessed().shoeing();
    if (shoeing != null && shoeing != Shoeing.UNSHOD) {
      hand("off");
    }
    hand("clean");
    hand("dress");
    switch (draft.technique()) {
      case COME_BACK, DRAW_NAIL, DRY_BANDAGE, POULTICE -> {
        // no time is given for first aid
      }
      case LEAVE_UNSHOD, LEAVE_OPEN -> hand("finish");
      case NAIL_ON, NAIL_ON_ADAPTED -> {
        hand("fit");
        hand("nail");
      }
      case GLUE_ON -> {
        hand("fit");
        bonding();
        new AdhesiveClock(draft, this).write(thickness, () -> {});
      }
      case CAST_WRAP -> {
        bonding();
        new TapeClock(draft, this).write(thickness, () -> hand("cut-out", "finish"), nails);
      }
      case PROSTHETIC_WALL -> {
        if (nails) {
          hand("fit");
          hand("nail-first", "nail");
          hand("dry-again", "dry");
          hand("key");
        } else {
          bonding();
        }
        new AdhesiveClock(draft, this).write(thickness, () -> hand("flush", "finish"));
      }
    }
    draft.say(CLOCK, "clock.horse");
    if (draft.technique().covers()) {
      draft.say(CLOCK, "clock.spoilt");
    }
  }

  private void bonding() {
    hand("dry");
    hand("key");
  }

  /** Work for which the step bears the name of its usual time. */
  void hand(String step) {
    hand(step, step);
  }

  /** Work by hand, for which the rule base keeps a usual time. */
  private void hand(String step, String time) {
    Figure usual = draft.limit("work." + time);
    Figure spread = draft.limit("work.spread");
    double share = spread.value() / 100;
    Figure minutes =
        Figure.between(
            usual.label(),
            Math.floor(usual.value() * (1 - share)),
            Math.ceil(usual.value() * (1 + share)),
            "minutes",
            "{usual} give or take {spread}, in whole minutes",
            FormulaParts.of("usual", usual).and("spread", spread));
    step("step." + step, minutes, LASTS);
  }

  /** Adds a step, or asks for what its time needs. */
  void step(String id, Figure minutes, Counted counted) {
    if (draft.known(minutes)) {
      steps.add(new ClockStep(draft.line(id, Map.of()), minutes, counted));
    }
  }
}
