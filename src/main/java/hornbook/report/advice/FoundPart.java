package hornbook.report.advice;

import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.Detail;
import hornbook.report.words.HeldWords;
import hornbook.report.words.PageContext;
import hornbook.rulebook.FindingKind;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.reserve.Reserves;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What was found on the foot: first what the technique has to answer, last what is as it should be,
 * which the usual page leaves out.
 */
final class FoundPart {
  /** Topics whose findings are steps on the way to a technique, told by name alone. */
  private static final Set<String> STEPS =
      Set.of("unshod", "nailing", "glue", "wrap", "prosthetic", "referral");

  private static final Set<String> AS_IT_SHOULD_BE = Set.of("straight-axis");

  /** What the reasons for the first choice say again. */
  private static final String SAID_ABOVE = "shoe-needed";

  private final PageContext told;

  FoundPart(PageContext told) {
    this.told = told;
  }

  List<Section> of(FootAdvice foot) {
    Reserves held = foot.reserves();
    List<Item> items = new ArrayList<>();
    List<Item> shape = new ArrayList<>();
    List<Item> good = new ArrayList<>();
    List<Item> last = new ArrayList<>();
    List<String> steps = new ArrayList<>();
    for (FindingGiven finding : foot.findings()) {
      FindingKind kind = told.book().findings().get(finding.id());
      boolean step = STEPS.contains(kind.topic()) && !kind.defect();
      if (step && told.detail() != Detail.FULL) {
        steps.add(kind.label());
      } else {
        boolean fine = AS_IT_SHOULD_BE.contains(finding.id());
        boolean said = told.detail() == Detail.USUAL && finding.id().equals(SAID_ABOVE);
        List<Item> to = said ? last : kind.defect() ? items : fine ? good : shape;
        to.add(found(finding, kind, held));
      }
    }
    items.addAll(shape);
    items.addAll(last);
    if (told.detail() != Detail.USUAL) {
      items.addAll(good);
    }
    if (!steps.isEmpty() && told.detail() != Detail.USUAL) {
      items.add(Item.of(String.join("; ", steps) + "."));
    }
    return Section.unlessEmpty(Kind.FOUND, "FOUND", items);
  }

  private Item found(FindingGiven finding, FindingKind kind, Reserves held) {
    RuleEntry rule = told.rule(finding.rule());
    String says = HeldWords.waiting(told.grounded(finding.says(), rule.basis()), rule, held);
    return new Item(kind.label(), says, List.of(), finding.rule());
  }
}
