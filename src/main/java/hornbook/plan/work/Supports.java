package hornbook.plan.work;

import static hornbook.plan.sheet.SheetPart.SHOE;

import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.SheetDraft;

/** The supports that are wished for, each with its numbers. */
final class Supports {
  private final SheetDraft draft;

  Supports(SheetDraft draft) {
    this.draft = draft;
  }

  void write() {
    for (String support : draft.wishes().supports()) {
      draft.say(SHOE, line(support), numbers(support));
      if (support.equals("pad") && draft.technique().nailed()) {
        draft.say(SHOE, "support.pad-nails");
      }
      if (support.equals("crack-lacing")) {
        draft.say(SHOE, "support.before-lacing", "wait", draft.limit("lacing.wait"));
      }
    }
  }

  /** The sentence of a support, which is another beside a shoe, or on a fore foot. */
  private String line(String support) {
    boolean shod = draft.technique().shod();
    boolean fore = draft.assessed().limb().fore();
    return "support."
        + switch (support) {
          case "boot" -> shod ? "boot-shod" : support;
          case "trailer" -> fore ? "trailer-fore" : support;
          default -> support;
        };
  }

  private Placeholders numbers(String support) {
    return switch (support) {
      case "pad" -> Placeholders.of("thick", draft.limit("pad.thickness"));
      case "crack-lacing" ->
          Placeholders.of("least", draft.limit("lacing.least"))
              .and("most", draft.limit("lacing.most"))
              .and("clear", draft.limit("hairline.least"));
      case "side-extension" -> Placeholders.of("out", draft.limit("extension.side"));
      case "toe-extension" -> Placeholders.of("out", draft.limit("extension.toe"));
      case "trailer" -> Placeholders.of("out", draft.limit("trailer.length"));
      default -> Placeholders.none();
    };
  }
}
