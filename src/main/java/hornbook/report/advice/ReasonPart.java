package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.LimitText;
import hornbook.report.words.ObservedText;
import hornbook.report.words.PageContext;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every reason once, with what was seen, the limits it was compared with and their sources. */
final class ReasonPart {
  private final PageContext told;

  ReasonPart(PageContext told) {
    this.told = told;
  }

  List<Section> of(FootAdvice foot) {
    Map<String, ReasonGiven> byRule = new TreeMap<>();
    Stream.concat(foot.techniques().stream(), foot.supports().stream())
        .map(OptionAdvice::reasons)
        .forEach(all -> all.forEach(reason -> byRule.putIfAbsent(reason.rule(), reason)));
    return Section.unlessEmpty(
        Kind.REASONS, "EVERY REASON", byRule.values().stream().map(this::item).toList());
  }

  private Item item(ReasonGiven reason) {
    String says = told.grounded(reason.says(), reason.basis());
    List<String> notes = new ArrayList<>();
    String seen =
        reason.because().stream()
            .filter(fact -> !(fact instanceof Limit))
            .map(fact -> new ObservedText(told.phrases()).line(fact))
            .collect(Collectors.joining("; "));
    if (!seen.isEmpty()) {
      notes.add("Seen: " + seen + (reason.close() ? "; NEAR the limit, look again" : ""));
    }
    LimitText limits = new LimitText(told.phrases(), told.citations());
    for (CitedFact fact : reason.because()) {
      if (fact instanceof Limit limit) {
        notes.add("Limit: " + limits.line(limit));
      }
    }
    List<String> works = told.citations().brief(reason.sources());
    String cited = works.isEmpty() ? "no work" : String.join("; ", works);
    notes.add("Source: " + cited + ". Basis: " + reason.basis().word() + ".");
    return new Item(told.rule(reason.rule()).title(), says, notes, reason.rule());
  }
}
