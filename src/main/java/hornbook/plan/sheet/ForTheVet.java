package hornbook.plan.sheet;

import static hornbook.plan.sheet.SheetPart.DRESS;
import static hornbook.plan.sheet.SheetPart.TROT;

import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.rulebook.reserve.Cut;
import hornbook.rulebook.reserve.Move;
import hornbook.rulebook.reserve.Reserves;
import java.util.ArrayList;
import java.util.List;

/**
 * What the sheet leaves to the vet: named, without a figure, in place of the sentences left out.
 */
public final class ForTheVet {
  private final SheetDraft draft;

  public ForTheVet(SheetDraft draft) {
    this.draft = draft;
  }

  /** What is not to be cut. */
  public void cuts() {
    Reserves held = draft.reserves();
    List<String> cuts = held.cuts().stream().map(ForTheVet::name).toList();
    if (!cuts.isEmpty()) {
      draft.say(
          DRESS,
          "dress.for-the-vet",
          Placeholders.of("cuts", new Placeholder.Word(list(cuts))).and("until", until(held)));
    }
  }

  /** What the horse is not to be asked to do. */
  public void moves() {
    Reserves held = draft.moves();
    List<String> moves = held.moves().stream().map(ForTheVet::name).toList();
    if (!moves.isEmpty()) {
      draft.say(
          TROT,
          "trot.for-the-vet",
          Placeholders.of("moves", new Placeholder.Word(list(moves))).and("until", until(held)));
    }
  }

  private static Placeholder until(Reserves held) {
    return new Placeholder.Word(held.until().event(held.days()));
  }

  private static String name(Cut cut) {
    return switch (cut) {
      case HEELS -> "the heels";
      case TOE -> "the toe";
      case SOLE -> "the sole";
      case FROG -> "the frog";
      case DEAD_HORN -> "dead horn";
      case HOLE -> "any hole";
    };
  }

  private static String name(Move move) {
    return switch (move) {
      case TROT -> "trot";
      case CIRCLES -> "turn in circles";
      case BACKING -> "back";
    };
  }

  private static String list(List<String> words) {
    List<String> all = new ArrayList<>(words);
    String last = all.remove(all.size() - 1);
    return all.isEmpty() ? last : String.join(", ", all) + " and " + last;
  }
}
