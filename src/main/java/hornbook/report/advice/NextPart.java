package hornbook.report.advice;

import hornbook.advice.CautionGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.Question;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.usual.CautionsShown;
import hornbook.report.usual.QuestionsAsked;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Cautions, and what to look at next: the weightiest first. */
final class NextPart {
  private static final String COULD_MEAN = "could mean ";

  private static final Set<String> SOON =
      Set.of(
          COULD_MEAN + ReferralPart.heading(Urgency.NOW),
          COULD_MEAN + ReferralPart.heading(Urgency.TODAY));

  private static final int MOST_CHANGES = 4;

  private final PageContext told;

  NextPart(PageContext told) {
    this.told = told;
  }

  List<Section> of(FootAdvice foot) {
    List<Section> sections = new ArrayList<>();
    List<Item> cautions =
        (told.detail() == Detail.FULL ? foot.cautions() : CautionsShown.of(told, foot))
            .stream().map(this::caution).toList();
    List<Item> next =
        told.detail() == Detail.FULL
            ? foot.questions().stream().map(this::question).toList()
            : byWeight(foot);
    sections.addAll(Section.unlessEmpty(Kind.CAUTIONS, "TAKE CARE", cautions));
    sections.addAll(Section.unlessEmpty(Kind.NEXT, "LOOK AT NEXT", next));
    return sections;
  }

  private Item caution(CautionGiven caution) {
    String says = told.grounded(caution.says(), caution.basis());
    return new Item("", says, List.of(), caution.rule());
  }

  /** What could call the vet, the soonest first; then what could change the shoe. */
  private List<Item> byWeight(FootAdvice foot) {
    Map<String, Set<String>> byWeight = new LinkedHashMap<>();
    Set<String> atTheTop = new LinkedHashSet<>();
    List<Question> asked =
        told.detail() == Detail.USUAL ? QuestionsAsked.of(foot) : foot.questions();
    for (Question question : asked) {
      if (!question.worth().changesAdvice()) {
        continue;
      }
      String name = FieldNames.of(question.field());
      if (question.provisional()) {
        atTheTop.add(name);
      }
      byWeight.computeIfAbsent(weight(question), weight -> new LinkedHashSet<>()).add(name);
    }
    List<Item> items = new ArrayList<>();
    if (!atTheTop.isEmpty() && atTheTop.size() <= ReferralPart.MOST_NAMED) {
      items.add(Item.of("first those named above as provisional."));
      byWeight.keySet().removeIf(weight -> SOON.contains(weight));
    }
    byWeight.forEach((weight, names) -> items.add(Item.of(weight, String.join("; ", names) + ".")));
    return items;
  }

  private static String weight(Question question) {
    if (question.urgency() == Urgency.MENTION) {
      return "could be worth mentioning to the vet";
    }
    if (question.urgency() != null) {
      return COULD_MEAN + ReferralPart.heading(question.urgency());
    }
    return switch (question.worth()) {
      case FIRST_CHOICE -> "could change the first choice";
      case VERDICT -> "could change what else is possible";
      case SUPPORT -> "could change the support";
      case CAUTION -> "could bring a caution";
      case MENTION -> "could make a call for the vet less urgent";
      default -> "could only add to the reasons";
    };
  }

  private Item question(Question question) {
    List<String> changes = question.couldChange();
    int named = Math.min(MOST_CHANGES, changes.size());
    String could = weight(question) + (named > 0 ? ": " : "");
    could += changes.stream().limit(named).map(this::named).collect(Collectors.joining(", "));
    could += changes.size() > named ? " and " + (changes.size() - named) + " more" : "";
    return new Item(
        FieldNames.of(question.field()),
        FieldNames.how(question.field()),
        List.of(Sentence.capital(could) + ". " + question.why() + ". Field: " + question.field()),
        null);
  }

  private String named(String change) {
    return switch (change) {
      case "referral" -> "the vet";
      case "caution" -> "a caution";
      default -> told.label(change);
    };
  }
}
