package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.SHOE;

import hornbook.assessment.ShoeSize;
import hornbook.assessment.word.PresentShoe;
import hornbook.plan.effect.FootNumbers;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.nailing.Nailing;
import hornbook.plan.sheet.HeelsFree;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.ShoeSizes;
import hornbook.plan.sheet.Technique;
import java.util.Comparator;
import java.util.List;

/** How the shoe is cut, fitted and supported. */
public final class Fitting {
  private final SheetDraft draft;

  public Fitting(SheetDraft draft) {
    this.draft = draft;
  }

  /** How far a branch ends behind the heel buttress, by the form of the foot; null without shoe. */
  public Figure branch(Figure toeAngle) {
    if (!draft.technique().shod()) {
      return null;
    }
    Figure thickness = draft.given().shoeThickness();
    if (is("angle.upright", toeAngle) && !draft.wished("longer-branch")) {
      Figure most = draft.limit("branch.upright");
      return Figure.reckoned(
          "branch behind the heel buttress",
          Math.min(most.value(), thickness.value()),
          "mm",
          "upright foot at {angle}: no more than {most}",
          FormulaParts.of("angle", toeAngle).and("most", most).and("thickness", thickness));
    }
    boolean acute = is("angle.acute", toeAngle) || draft.wished("longer-branch");
    Figure times = draft.times(acute ? "branch.acute" : "branch.regular");
    return Figure.reckoned(
        "branch behind the heel buttress",
        times.value() * thickness.value(),
        "mm",
        "shoe {thickness} x {times}, toe angle {angle}",
        FormulaParts.of("thickness", thickness).and("times", times).and("angle", toeAngle));
  }

  private boolean is(String limit, Figure toeAngle) {
    return draft.limited(limit)
        && toeAngle.known()
        && draft.limit(limit).limit().allows(toeAngle.value());
  }

  /**
   * Writes it, and gives the sizes.
   *
   * @param nailing what nails and clips there are
   */
  public ShoeSizes write(Figure branch, FootNumbers before, FootNumbers after, Nailing nailing) {
    if (!draft.technique().shod()) {
      if (!draft.technique().firstAid()) {
        new Supports(draft).write();
      }
      return ShoeSizes.NONE;
    }
    ShoeSizes shoe = sizes(before.width(), after.width());
    draft.say(SHOE, "shoe.shape");
    if (draft.technique().covers()) {
      draft.say(SHOE, "shoe.cold");
    }
    draft.say(SHOE, "shoe.rim", "rim", draft.limit("fit.sole-rim"));
    draft.say(SHOE, branchLine(branch), "branch", branch);
    heels(nailing.driven() || draft.technique().nailed());
    new Supports(draft).write();
    change();
    held(!nailing.clips().isEmpty());
    return shoe;
  }

  /** Room for the heels to widen, from where the shoe is no longer fixed to the wall. */
  private void heels(boolean nailed) {
    Placeholders holes =
        Placeholders.of("least", draft.limit("fit.heels-least"))
            .and("most", draft.limit("fit.heels-most"))
            .and("some", draft.limit("heels.move-least"))
            .and("move", draft.limit("heels.move-most"));
    if (nailed) {
      draft.say(SHOE, "shoe.heels", holes);
    } else if (draft.technique() == Technique.GLUE_ON) {
      draft.say(SHOE, "shoe.heels-glued", holes.and("free", HeelsFree.from(draft)));
    } else {
      draft.say(SHOE, "shoe.heels-bonded", holes);
    }
  }

  private String branchLine(Figure branch) {
    if (draft.wished("egg-bar")) {
      return "shoe.branch-egg";
    }
    if (draft.wished("longer-branch")) {
      return "shoe.branch-longer";
    }
    if (!branch.known()) {
      return "shoe.branch-regular";
    }
    if (branch.parts().containsKey("most")) {
      return "shoe.branch-upright";
    }
    boolean sloping = branch.parts().get("times").limit().id().equals("branch.acute");
    return sloping ? "shoe.branch-sloping" : "shoe.branch-regular";
  }

  private ShoeSizes sizes(Figure before, Figure after) {
    List<ShoeSize> list = draft.assessment().kit().shoeSizes();
    if (list == null) {
      draft.ask("kit.shoeSizes", "the size of shoe, before and after");
      return ShoeSizes.NONE;
    }
    boolean known = draft.known(before) & draft.known(after);
    ShoeSizes shoe = new ShoeSizes(size(list, before), size(list, after));
    if (!known) {
      return shoe;
    }
    if (shoe.after() == null) {
      draft.say(SHOE, "shoe.no-size", "width", after);
    } else {
      draft.say(
          SHOE,
          shoe.after().equals(shoe.before()) ? "shoe.size" : "shoe.size-up",
          Placeholders.of("after", new Placeholder.Word(shoe.after()))
              .and("before", new Placeholder.Word(shoe.before()))
              .and("width", after));
    }
    if (draft.technique() == Technique.CAST_WRAP) {
      draft.say(SHOE, "shoe.wrap-size");
    }
    return shoe;
  }

  /** The narrowest shoe that is as wide as the foot, or null; null for an unknown width. */
  private static String size(List<ShoeSize> list, Figure width) {
    return list.stream()
        .filter(one -> one.width() != null && one.label() != null && one.width() >= width.value())
        .min(Comparator.comparing(ShoeSize::width))
        .map(ShoeSize::label)
        .orElse(null);
  }

  /** A shoe that held something up is not changed for a plain one without a word. */
  private void change() {
    PresentShoe now = draft.assessed().care().presentShoe();
    boolean holds =
        now == PresentShoe.BAR || now == PresentShoe.HEART_BAR || now == PresentShoe.WEDGED;
    boolean goesOn =
        draft.wishes().supports().stream()
            .anyMatch(one -> one.endsWith("-bar") || one.equals("heel-wedge"));
    if (holds && !goesOn) {
      draft.say(SHOE, "shoe.change", "shoe", new Placeholder.Word(now.word()));
    }
  }

  /** Supports that the advice holds open and nobody asked for. */
  private void held(boolean clips) {
    List<String> held =
        draft.foot().supports().stream()
            .filter(one -> one.verdict().open() && !draft.wished(one.id()))
            .filter(one -> !(clips && one.id().equals("clips")))
            .map(one -> draft.advice().rulebook().support(one.id()).label())
            .toList();
    if (!held.isEmpty()) {
      draft.say(SHOE, "shoe.held", "supports", new Placeholder.Word(String.join(", ", held)));
    }
  }
}
