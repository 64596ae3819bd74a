package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.TO_HAND;

import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;

/** What has to lie ready beside the horse before the work begins. */
public final class ToHand {
  private final SheetDraft draft;

  public ToHand(SheetDraft draft) {
    this.draft = draft;
  }

  public void write() {
    Technique technique = draft.technique();
    if (technique.covers()) {
      say("bonding");
      say("guard");
      say(technique == Technique.CAST_WRAP ? "tape" : "adhesive");
      if (technique == Technique.PROSTHETIC_WALL) {
        say("fibre");
      }
    } else if (technique == Technique.DRAW_NAIL) {
      say("nail-tools");
    } else if (technique.dressing()) {
      say("bandage");
    }
    if (technique == Technique.POULTICE) {
      say("poultice");
    }
  }

  private void say(String line) {
    draft.say(TO_HAND, "hand." + line);
  }
}
