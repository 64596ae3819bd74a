package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.PREPARE;

import hornbook.assessment.Workplace;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;

/** What has to be done and true before anything goes on, by material and weather. */
public final class Preparing {
  private final SheetDraft draft;

  public Preparing(SheetDraft draft) {
    this.draft = draft;
  }

  public void write() {
    Technique technique = draft.technique();
    if (technique.covers()) {
      bond();
    } else if (technique == Technique.LEAVE_OPEN) {
      draft.say(PREPARE, "prepare.open");
    } else if (technique == Technique.LEAVE_UNSHOD) {
      draft.say(PREPARE, "prepare.bare");
    } else {
      draft.say(PREPARE, "prepare.nail");
      draft.say(PREPARE, "prepare.nail-hot");
    }
  }

  private void bond() {
    place();
    cold();
    if (draft.technique() == Technique.PROSTHETIC_WALL) {
      draft.say(PREPARE, "prepare.after-nails");
    }
    draft.say(PREPARE, "prepare.dry");
    draft.say(PREPARE, "prepare.key");
    draft.say(PREPARE, "prepare.degrease");
    if (draft.technique() == Technique.GLUE_ON) {
      draft.say(PREPARE, "prepare.shoe");
    }
    draft.say(
        PREPARE,
        "prepare.hairline",
        Placeholders.of("aim", draft.limit("hairline.most"))
            .and("least", draft.limit("hairline.least")));
    draft.say(PREPARE, "prepare.ready");
    draft.say(PREPARE, "prepare.stop");
  }

  private void place() {
    Workplace place = draft.assessment().visit().workplace();
    if (place == null) {
      draft.ask("visit.workplace", "whether the foot can be kept dry and set down level");
    } else if (place == Workplace.WET) {
      draft.say(PREPARE, "prepare.wet-place");
    } else if (place == Workplace.UNEVEN) {
      draft.say(PREPARE, "prepare.uneven-place");
    }
  }

  private void cold() {
    Figure air = draft.given().airTemperature();
    Figure least = draft.limit("glue.air.least");
    if (draft.known(air) && air.value() < least.value()) {
      draft.say(PREPARE, "prepare.cold", Placeholders.of("air", air).and("least", least));
    }
  }
}
