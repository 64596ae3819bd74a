package hornbook.plan.time;

import static hornbook.plan.sheet.SheetPart.OWNER;
import static hornbook.plan.sheet.SheetPart.TROT;
import static hornbook.plan.sheet.SheetPart.VET;

import hornbook.advice.Question;
import hornbook.assessment.Handling;
import hornbook.assessment.Judged;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallStretch;
import hornbook.foot.Age;
import hornbook.plan.effect.FootNumbers;
import hornbook.plan.effect.WallStretches;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.ForTheVet;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;
import hornbook.rulebook.fact.Urgency;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** What the owner, the vet and whoever trots the horse up are told. */
public final class Aftercare {
  private static final String FIRST_DAY = "first-day";

  private final SheetDraft draft;

  public Aftercare(SheetDraft draft) {
    this.draft = draft;
  }

  public void write(
      Growing growing, Figure full, FootNumbers before, FootNumbers after, int nails) {
    owner(growing, full);
    vet(before, after, nails);
    trot(nails);
  }

  /** Ten lines, whatever the technique. */
  private void owner(Growing growing, Figure full) {
    draft.say(OWNER, "owner.lame");
    boolean dangerous = draft.assessment().visit().handling() == Handling.DANGEROUS;
    draft.say(OWNER, dangerous ? "owner.watch" : "owner.heat");
    for (String line : special()) {
      if (line.equals(FIRST_DAY)) {
        firstDay(full);
      } else {
        draft.say(OWNER, "owner." + line);
      }
    }
    draft.say(OWNER, daily(dangerous));
    draft.say(OWNER, "owner.nothing-on");
    draft.say(OWNER, rest());
    draft.say(OWNER, "owner.tetanus");
    LocalDate next = growing.nextVisit();
    if (next == null) {
      draft.say(OWNER, "owner.next-days", "days", growing.interval());
    } else {
      draft.say(OWNER, "owner.next", "day", new Placeholder.On(next));
    }
  }

  /** Nobody picks up a foot that is dangerous, or picks out one that is bandaged. */
  private String daily(boolean dangerous) {
    if (dangerous) {
      return "owner.leave-down";
    }
    return draft.technique().dressing() ? "owner.bandage-dry" : "owner.pick-out";
  }

  private String rest() {
    if (draft.technique().firstAid()) {
      return "owner.first-aid-rest";
    }
    return young() ? "owner.foal" : "owner.work";
  }

  private boolean young() {
    return Age.days(draft.assessment().horse()).high() < draft.readings().limits().grownDays();
  }

  private void firstDay(Figure full) {
    if (full == null) {
      draft.say(OWNER, "owner.first-day-unknown");
    } else {
      draft.say(OWNER, "owner.first-day", "full", full);
    }
  }

  /** The three lines that belong to the technique. */
  private List<String> special() {
    return switch (draft.technique()) {
      case COME_BACK -> List.of("loose-shoe", "soft-ground", "no-force");
      case DRAW_NAIL -> List.of("next-day", "hole-clean", "loose-shoe");
      case DRY_BANDAGE -> List.of("bandage-daily", "bandage-wet", "bandage-tight");
      case POULTICE -> List.of("bandage-daily", "poultice-end", "bandage-tight");
      case LEAVE_UNSHOD -> List.of("soft-ground", "chips", "footsore");
      case LEAVE_OPEN -> List.of("dry-standing", "brush-out", "smell");
      case NAIL_ON, NAIL_ON_ADAPTED -> List.of("next-day", "clenches", "loose-shoe");
      case GLUE_ON -> List.of(FIRST_DAY, "wet", "loose-bond");
      case CAST_WRAP -> List.of("wrap-daily", "wet", "wrap-off");
      case PROSTHETIC_WALL -> List.of(FIRST_DAY, "wet", "edges");
    };
  }

  private void vet(FootNumbers before, FootNumbers after, int nails) {
    draft.say(
        VET,
        draft.technique() == Technique.COME_BACK ? "vet.not-today" : "vet.done",
        Placeholders.of("technique", new Placeholder.Word(label()))
            .and("limb", new Placeholder.Word(draft.assessed().limb().word())));
    supports();
    for (WallStretch lost : new WallStretches(draft).lost()) {
      if (lost.height() != null) {
        draft.say(
            VET,
            "vet.defect",
            Placeholders.of("place", WallStretches.place(lost))
                .and("height", draft.given().height(lost)));
      }
    }
    cracks();
    judged();
    if (nails > 0) {
      draft.say(VET, "vet.nails", "nails", Figure.measured("nails driven", nails, "", null));
    }
    if (after.toeAngle().known() && !draft.technique().firstAid()) {
      draft.say(
          VET,
          "vet.angle",
          Placeholders.of("before", before.toeAngle()).and("after", after.toeAngle()));
    }
    if (draft.technique().covers()) {
      draft.say(VET, "vet.covered");
    }
    if (draft.readings().measures().palmarAngle() == null) {
      draft.say(VET, "vet.no-images");
    }
    boolean called =
        draft.foot().urgency().map(urgency -> urgency.compareTo(Urgency.DAYS) <= 0).orElse(false);
    boolean unseen = draft.foot().questions().stream().anyMatch(Question::provisional);
    if (!called && draft.foot().urgency().isPresent()) {
      draft.say(VET, "vet.mention");
      if (unseen) {
        draft.say(VET, "vet.not-all");
      }
    } else {
      draft.say(VET, called ? "vet.referral" : unseen ? "vet.unseen" : "vet.sound");
    }
  }

  private void supports() {
    List<String> wished = draft.wishes().supports();
    if (draft.technique().shod() && !wished.isEmpty()) {
      String labels =
          wished.stream()
              .map(one -> draft.advice().rulebook().support(one).label())
              .collect(Collectors.joining(", "));
      draft.say(VET, "vet.supports", "supports", new Placeholder.Word(labels));
    }
  }

  private void judged() {
    List<Judged> judged = draft.assessed().care().vetJudged();
    Integer ago = draft.assessed().care().vetSawDaysAgo();
    if (judged == null || judged.isEmpty() || ago == null) {
      return;
    }
    String field = draft.given().path("care.vetSawDaysAgo");
    String all = judged.stream().map(Judged::word).collect(Collectors.joining(", "));
    draft.say(
        VET,
        "vet.judged",
        Placeholders.of("ago", Figure.measured("days since a vet saw the foot", ago, "days", field))
            .and("judged", new Placeholder.Word(all)));
  }

  private void cracks() {
    List<WallCrack> cracks = draft.assessed().cracks();
    if (cracks == null) {
      return;
    }
    for (WallCrack crack : cracks) {
      if (crack.place() != null) {
        draft.say(VET, "vet.crack", "place", new Placeholder.Word(crack.place().word()));
      }
    }
  }

  private String label() {
    return draft.advice().rulebook().technique(draft.technique().id()).label();
  }

  private void trot(int nails) {
    new ForTheVet(draft).moves();
    if (draft.technique().firstAid()) {
      return;
    }
    draft.say(TROT, "trot.stand");
    draft.say(TROT, "trot.straight");
    draft.say(TROT, "trot.turn");
    draft.say(TROT, "trot.land");
    if (nails > 0) {
      draft.say(TROT, "trot.nails");
    }
    if (draft.technique().covers()) {
      draft.say(TROT, "trot.hairline");
    }
    draft.say(TROT, "trot.fit-for-work");
  }
}
