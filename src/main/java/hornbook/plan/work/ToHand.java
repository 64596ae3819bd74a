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
    shoe();
    if (technique == Technique.POULTICE) {
      say("poultice");
    }
  }

  /** The shoe, and what the supports agreed on take beside it. */
  private void shoe() {
    if (!draft.technique().shod()) {
      return;
    }
    boolean first =
        draft.technique() == Technique.GLUE_ON || draft.technique() == Technique.PROSTHETIC_WALL;
    say(first ? "shoe" : "shoe-nailed");
    if (draft.wished("pad")) {
      draft.say(TO_HAND, "hand.pad", "thick", draft.limit("pad.thickness"));
    }
    if (draft.wished("treatment-plate")) {
      say("plate");
    }
    if (draft.wished("crack-lacing")) {
      say("lacing");
    }
  }

  private void say(String line) {
    draft.say(TO_HAND, "hand." + line);
  }
}
