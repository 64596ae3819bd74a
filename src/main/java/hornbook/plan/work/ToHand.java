package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.TO_HAND;

import hornbook.assessment.word.Shoeing;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;

/** What has to lie ready beside the horse before the work begins. */
public final class ToHand {
  private final SheetDraft draft;

  public ToHand(SheetDraft draft) {
    this.draft = draft;
  }

  /**
   * @param nails whether nails are driven
   */
  public void write(boolean nails) {
    Technique technique = draft.technique();
    trim();
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
    shoe(nails);
    if (technique == Technique.POULTICE) {
      say("poultice");
    }
  }

  /** What every trim takes, and what the old shoe does. */
  private void trim() {
    boolean trimmed = !draft.technique().firstAid();
    if (trimmed) {
      say("trim");
    }
    if (draft.technique() == Technique.LEAVE_OPEN) {
      say("open");
    }
    Shoeing shoeing = draft.assessed().shoeing();
    boolean stubs = Boolean.TRUE.equals(draft.assessed().lostShoe());
    if (shoeing == Shoeing.NAILED && (trimmed || FirstAid.shoeOff(draft)) || trimmed && stubs) {
      say("off-nailed");
    } else if (trimmed && (shoeing == Shoeing.GLUED || shoeing == Shoeing.WRAPPED)) {
      say("off-" + shoeing.word());
    }
  }

  /** The shoe, and what the supports agreed on take beside it. */
  private void shoe(boolean nails) {
    if (!draft.technique().shod()) {
      return;
    }
    boolean bonded =
        draft.technique() == Technique.GLUE_ON
            || draft.technique() == Technique.PROSTHETIC_WALL && !nails;
    say(bonded ? "shoe" : "shoe-nailed");
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
