package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.FIRST_AID;

import hornbook.assessment.Care;
import hornbook.assessment.Foot;
import hornbook.assessment.Handling;
import hornbook.assessment.Signs;
import hornbook.assessment.word.Drainage;
import hornbook.assessment.word.LivingTissue;
import hornbook.assessment.word.NailDrawn;
import hornbook.assessment.word.Puncture;
import hornbook.assessment.word.Shoeing;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;

/** What is done for a foot on which no work is done today. */
public final class FirstAid {
  private final SheetDraft draft;
  private final Foot foot;
  private final Signs signs;
  private final Care care;

  public FirstAid(SheetDraft draft) {
    this.draft = draft;
    this.foot = draft.assessed();
    this.signs = foot.signs();
    this.care = foot.care();
  }

  public void write() {
    switch (draft.technique()) {
      case COME_BACK -> comeBack();
      case DRAW_NAIL -> drawNail();
      case DRY_BANDAGE -> {
        shoe();
        underBandage();
        bandage();
      }
      case POULTICE -> {
        shoe();
        poultice();
        bandage();
      }
      default -> throw new IllegalStateException(draft.technique() + " is no first aid");
    }
  }

  private void say(String line) {
    draft.say(FIRST_AID, "first-aid." + line);
  }

  private void comeBack() {
    boolean dangerous = draft.assessment().visit().handling() == Handling.DANGEROUS;
    say(dangerous ? "stand-away" : "leave");
    say("from-the-ground");
    say("agree");
    say("write-down");
  }

  private void drawNail() {
    if (care.soreNail() == null) {
      say("find-nail");
    } else {
      draft.say(FIRST_AID, "first-aid.sore-nail", "nail", new Placeholder.Word(care.soreNail()));
    }
    say(care.nailDrawn() == NailDrawn.DRY ? "nail-is-out" : "draw");
    say("look-at-nail");
    say("flush");
    say("other-nails");
    draft.say(FIRST_AID, "first-aid.still-holds", "least", draft.limit("nails.branch.least"));
    draft.say(FIRST_AID, "first-aid.leave-hole", "days", draft.limit("first-aid.again"));
  }

  /** A nailed shoe comes off where there is pus, and stays where something stands in the foot. */
  private void shoe() {
    if (Boolean.TRUE.equals(signs.objectInPlace())) {
      say("block");
    } else if (shoeOff(draft)) {
      say("shoe-off");
    }
    say("clean");
  }

  /** Whether a nailed shoe comes off before the foot goes under a bandage. */
  static boolean shoeOff(SheetDraft draft) {
    Foot foot = draft.assessed();
    Signs signs = foot.signs();
    boolean pus =
        draft.technique() == Technique.POULTICE
            || signs.drainage() != null && signs.drainage() != Drainage.NONE;
    boolean wet = foot.care().nailDrawn() == NailDrawn.WET;
    return draft.technique().dressing()
        && foot.shoeing() == Shoeing.NAILED
        && !Boolean.TRUE.equals(signs.objectInPlace())
        && (pus || wet);
  }

  private void underBandage() {
    if (signs.puncture() != null && signs.puncture() != Puncture.NONE) {
      say("ring");
    }
    boolean open = signs.livingTissue() == LivingTissue.EXPOSED;
    if (open || Boolean.TRUE.equals(signs.coronetTorn())) {
      say("non-stick");
    }
  }

  private void poultice() {
    say("cut-poultice");
    draft.say(FIRST_AID, "first-aid.wet-poultice", "warm", draft.limit("first-aid.warm"));
    Figure most = draft.limit("first-aid.poultice.most");
    draft.say(
        FIRST_AID,
        "first-aid.poultice-days",
        Placeholders.of("most", most).and("dry", draft.limit("first-aid.dry.least")));
  }

  private void bandage() {
    say("pad");
    draft.say(FIRST_AID, "first-aid.wind", "overlap", draft.limit("wrap.overlap"));
    say("outside");
    if (draft.wished("boot")) {
      say("boot-over");
    }
    say("no-seal");
    say("change");
  }
}
