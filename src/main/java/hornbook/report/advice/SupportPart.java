package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.DecidingReason;
import hornbook.report.words.Detail;
import hornbook.report.words.PageContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The supports for heels, toe and wall, with a word of their verdict each. */
final class SupportPart {
  private static final int FEW = 3;
  private static final String IF_SHOD = "if it is shod, ";

  private final PageContext told;
  private final OptionLines lines;

  SupportPart(PageContext told) {
    this.told = told;
    this.lines = new OptionLines(told);
  }

  List<Section> of(FootAdvice foot) {
    DecidingReason deciding = DecidingReason.supports(foot);
    List<Item> items = new ArrayList<>();
    for (Verdict verdict : List.of(Verdict.WORKABLE, Verdict.WITH_VET, Verdict.RULED_OUT)) {
      List<OptionAdvice> all = with(foot, verdict);
      if (verdict == Verdict.WORKABLE && goesBare(foot)) {
        items.addAll(lines.of(deciding, all.stream().filter(one -> !onShoe(one)).toList()));
        lines.of(deciding, all.stream().filter(this::onShoe).toList()).stream()
            .map(SupportPart::ifShod)
            .forEach(items::add);
      } else {
        items.addAll(lines.of(deciding, all));
      }
    }
    List<OptionAdvice> unspoken = with(foot, Verdict.NOT_INDICATED);
    if (!unspoken.isEmpty() && told.detail() != Detail.USUAL) {
      items.add(Item.of("not indicated: " + unspoken(foot, unspoken)));
    }
    return Section.unlessEmpty(Kind.SUPPORT, "SUPPORT", items);
  }

  /** Their names, but for short when that would be a long list of what nobody asked for. */
  private String unspoken(FootAdvice foot, List<OptionAdvice> unspoken) {
    if (unspoken.size() == foot.supports().size()) {
      return "any support";
    }
    return told.detail() == Detail.FULL || unspoken.size() <= FEW
        ? unspoken.stream().map(one -> told.label(one.id())).collect(Collectors.joining(", "))
        : "the other " + unspoken.size();
  }

  private static Item ifShod(Item item) {
    String named = item.named() == null ? null : IF_SHOD + item.named();
    return new Item(IF_SHOD + item.lead(), item.text(), item.notes(), item.rule(), named);
  }

  /** Whether what comes first puts no shoe on. */
  private boolean goesBare(FootAdvice foot) {
    return foot.firstChoice().map(one -> !told.book().technique(one.id()).shoe()).orElse(false);
  }

  private boolean onShoe(OptionAdvice support) {
    return told.book().support(support.id()).shoe();
  }

  private static List<OptionAdvice> with(FootAdvice foot, Verdict verdict) {
    return foot.supports().stream().filter(one -> one.verdict() == verdict).toList();
  }
}
