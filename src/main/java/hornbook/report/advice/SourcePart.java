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
import hornbook.report.words.PageContext;
import hornbook.rulebook.Source;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The works the advice on a foot rests on, and what the marks of weaker ground mean. */
final class SourcePart {
  private static final String MARKS =
      "Unmarked: published. (quoted): read in another work. (derived): worked out from published"
          + " figures. (practice): common practice, no source. (memory): from memory, to be"
          + " checked before anyone relies on it.";

  private static final String MARKS_BRIEF =
      "(quoted) second-hand (derived) a sum (practice) no source (memory) unchecked";

  private final PageContext told;

  SourcePart(PageContext told) {
    this.told = told;
  }

  List<Section> of(FootAdvice foot) {
    Set<String> all = works(Stream.concat(behindTheChoice(foot), behindTheRest(foot)));
    List<Item> items = new ArrayList<>();
    if (told.detail() == Detail.FULL) {
      all.forEach(key -> items.add(Item.of(told.citations().full(key) + " [" + key + "]")));
    } else if (!all.isEmpty()) {
      items.add(Item.of(brief(works(behindTheChoice(foot)), all.size())));
    }
    items.add(Item.of(told.detail() == Detail.FULL ? MARKS : MARKS_BRIEF));
    return List.of(new Section(Kind.SOURCES, "SOURCES", items));
  }

  /** Those that call the vet soonest or stand behind the first choice, and how many more. */
  private static String brief(Set<String> weighty, int all) {
    int more = all - weighty.size();
    if (weighty.isEmpty()) {
      return "works: " + more + ", --full";
    }
    return "works: "
        + String.join(", ", weighty)
        + (more > 0 ? " and " + more + " more" : "")
        + ": --full";
  }

  private static Set<String> works(Stream<? extends Collection<String>> keys) {
    Set<String> works = new TreeSet<>();
    keys.forEach(works::addAll);
    works.removeIf(key -> !Source.work(key));
    return works;
  }

  private static Stream<List<String>> behindTheChoice(FootAdvice foot) {
    Urgency soonest =
        foot.referrals().stream()
            .map(ReferralGiven::urgency)
            .min(Comparator.naturalOrder())
            .orElse(null);
    return Stream.concat(
        foot.referrals().stream()
            .filter(referral -> referral.urgency() == soonest)
            .map(ReferralGiven::sources),
        foot.firstChoice().stream()
            .flatMap(chosen -> chosen.reasons().stream())
            .filter(reason -> reason.bearing() == Bearing.FOR)
            .map(ReasonGiven::sources));
  }

  private static Stream<List<String>> behindTheRest(FootAdvice foot) {
    Stream<OptionAdvice> judged =
        Stream.concat(foot.techniques().stream(), foot.supports().stream());
    return Stream.of(
            foot.findings().stream().map(FindingGiven::sources),
            foot.cautions().stream().map(CautionGiven::sources),
            judged.flatMap(one -> one.reasons().stream()).map(ReasonGiven::sources))
        .flatMap(all -> all);
  }
}
