package hornbook.report.advice;

import hornbook.advice.CautionGiven;
import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.Detail;
import hornbook.report.words.Numbers;
import hornbook.report.words.PageContext;
import hornbook.rulebook.Source;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The works the advice on a foot rests on, and what the marks of weaker ground mean. */
final class SourcePart {
  private static final String MARKS =
      "Unmarked: published. (quoted): read in another work. (derived): worked out from published"
          + " figures. (practice): common practice, no source. (memory): from memory, check"
          + " before you rely on it.";

  private final PageContext told;

  SourcePart(PageContext told) {
    this.told = told;
  }

  List<Section> of(FootAdvice foot) {
    if (told.detail() == Detail.USUAL) {
      return List.of(new Section(Kind.SOURCES, "MORE WITH --full", List.of(Item.of(more(foot)))));
    }
    Set<String> all = works(behind(foot));
    List<Item> items = new ArrayList<>();
    all.forEach(key -> items.add(Item.of(told.citations().full(key) + " [" + key + "]")));
    items.add(Item.of(MARKS));
    return List.of(new Section(Kind.SOURCES, "SOURCES", items));
  }

  /** How much stands in full. */
  private static String more(FootAdvice foot) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    counts.put("measurement", foot.measures().size());
    counts.put("reason", reasons(foot));
    counts.put("caution", foot.cautions().size());
    counts.put("question", foot.questions().size());
    return counts.entrySet().stream()
        .filter(one -> one.getValue() > 0)
        .map(one -> Numbers.counted(one.getValue(), one.getKey()))
        .collect(Collectors.joining(", ", "", "."));
  }

  private static int reasons(FootAdvice foot) {
    Set<String> rules = new TreeSet<>();
    judged(foot).flatMap(one -> one.reasons().stream()).forEach(one -> rules.add(one.rule()));
    return rules.size();
  }

  private static Stream<OptionAdvice> judged(FootAdvice foot) {
    return Stream.concat(foot.techniques().stream(), foot.supports().stream());
  }

  private static Set<String> works(Stream<? extends Collection<String>> keys) {
    Set<String> works = new TreeSet<>();
    keys.forEach(works::addAll);
    works.removeIf(key -> !Source.work(key));
    return works;
  }

  private static Stream<List<String>> behind(FootAdvice foot) {
    return Stream.of(
            foot.referrals().stream().map(ReferralGiven::sources),
            foot.findings().stream().map(FindingGiven::sources),
            foot.cautions().stream().map(CautionGiven::sources),
            judged(foot).flatMap(one -> one.reasons().stream()).map(ReasonGiven::sources))
        .flatMap(all -> all);
  }
}
