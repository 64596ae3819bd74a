package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.advice.Question;
import hornbook.advice.ReferralGiven;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.HeldWords;
import hornbook.report.words.PageContext;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.List;

/** The calls for the vet, the most urgent first, and what keeps the advice provisional. */
public final class ReferralPart {
  /** Names put at the top; the others follow among the questions. */
  static final int MOST_NAMED = 8;

  private final PageContext told;

  ReferralPart(PageContext told) {
    this.told = told;
  }

  /** How soon, in the words of a heading. */
  public static String heading(Urgency urgency) {
    return switch (urgency) {
      case NOW -> "VET NOW";
      case TODAY -> "VET TODAY";
      case DAYS -> "VET WITHIN DAYS";
      case MENTION -> "MENTION TO THE VET";
    };
  }

  /** The names of what was not looked at and could make this the vet's case today. */
  static List<String> notLookedAt(FootAdvice foot) {
    return foot.questions().stream()
        .filter(Question::provisional)
        .map(question -> FieldNames.of(question.field()))
        .distinct()
        .toList();
  }

  List<Section> of(FootAdvice foot) {
    List<Section> sections = new ArrayList<>(elsewhere(foot));
    for (Urgency urgency : Urgency.values()) {
      List<Item> items =
          calls(foot).stream()
              .filter(referral -> referral.urgency() == urgency)
              .map(referral -> item(foot, referral))
              .toList();
      boolean soon = urgency.compareTo(Urgency.TODAY) <= 0;
      Kind kind = soon ? Kind.REFERRAL : Kind.REFERRAL_LATER;
      sections.addAll(Section.unlessEmpty(kind, heading(urgency), items));
    }
    if (foot.provisional()) {
      sections.add(provisional(foot));
    }
    return sections;
  }

  /** The calls on other feet that hold something back on this one. */
  private List<Section> elsewhere(FootAdvice foot) {
    List<Item> items = new ArrayList<>();
    for (String line : HeldWords.on(foot)) {
      items.add(new Item(line, "", List.of(), null));
    }
    return Section.unlessEmpty(Kind.REFERRAL, "SEE TO ANOTHER FOOT FIRST", items);
  }

  /** In full even what gives way to a sooner call is named. */
  private List<ReferralGiven> calls(FootAdvice foot) {
    return told.detail() == Detail.FULL ? foot.referrals() : foot.calls();
  }

  private Item item(FootAdvice foot, ReferralGiven referral) {
    if (!foot.calls().contains(referral)) {
      return new Item(told.rule(referral.rule()).title(), "", List.of(), referral.rule());
    }
    String says = told.grounded(referral.says(), referral.basis());
    List<String> notes =
        referral.meanwhile() == null
            ? List.of()
            : List.of("Meanwhile: " + told.phrases().says(referral.meanwhile()));
    return new Item(told.rule(referral.rule()).title(), says, notes, referral.rule());
  }

  private Section provisional(FootAdvice foot) {
    List<String> open = notLookedAt(foot);
    int named = told.detail() == Detail.FULL ? open.size() : Math.min(MOST_NAMED, open.size());
    int more = open.size() - named;
    String says =
        "not looked at; could mean a vet today: "
            + String.join("; ", open.subList(0, named))
            + (more > 0 ? "; and " + more + " more." : ".");
    return new Section(Kind.PROVISIONAL, "PROVISIONAL", List.of(Item.of(says)));
  }
}
