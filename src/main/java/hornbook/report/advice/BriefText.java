package hornbook.report.advice;

import hornbook.advice.AfterVet;
import hornbook.advice.FootAdvice;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Statement;
import hornbook.advice.Verdict;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.page.TerminalStyle;
import hornbook.report.words.FieldNames;
import hornbook.report.words.HeldWords;
import hornbook.report.words.Numbers;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The advice on a foot in a few lines: what to do now, and what to look at first. */
final class BriefText {
  private static final int MOST_SIGNS = 4;
  private static final int MOST_TITLES = 2;

  private final PageContext told;
  private final FootAdvice foot;

  private BriefText(PageContext told, FootAdvice foot) {
    this.told = told;
    this.foot = foot;
  }

  /**
   * At most {@code budget} lines, or as many as the calls for now and today with what to do
   * meanwhile, what has to be done first and what speaks against the first choice take: those are
   * never shortened. Of the rest, what stands last gives way first.
   */
  static List<String> lines(
      PageContext told, FootAdvice foot, int width, TerminalStyle paint, int budget) {
    List<BriefPart> parts = new BriefText(told, foot).parts();
    shorten(parts, parts, width, budget);
    return parts.stream().flatMap(part -> part.lines(width, paint).stream()).toList();
  }

  private static void shorten(List<BriefPart> some, List<BriefPart> parts, int width, int budget) {
    boolean gave = true;
    while (gave && height(parts, width) > budget) {
      gave = false;
      for (int i = some.size() - 1; i >= 0 && height(parts, width) > budget; i--) {
        gave |= some.get(i).shorten();
      }
    }
  }

  private static int height(List<BriefPart> parts, int width) {
    return parts.stream().mapToInt(part -> part.height(width)).sum();
  }

  private List<BriefPart> parts() {
    List<BriefPart> parts = new ArrayList<>();
    String limb = FieldNames.of(foot.limb()).toUpperCase(Locale.ROOT);
    parts.add(new BriefPart(Kind.SOURCES, limb, ""));
    for (String line : HeldWords.on(foot)) {
      parts.add(new BriefPart(Kind.REFERRAL, "SEE TO ANOTHER FOOT FIRST.", line));
    }
    urgent(parts);
    later(Urgency.DAYS, parts);
    later(Urgency.MENTION, parts);
    provisional(parts);
    for (Section section : Page.incomplete(told, foot)) {
      List<String> says = section.items().stream().map(Item::text).toList();
      parts.add(
          new BriefPart(
              Kind.INCOMPLETE,
              section.heading() + ":",
              String.join(". ", says) + ".",
              says.get(0) + (says.size() > 1 ? "; and " + (says.size() - 1) + " more." : ".")));
    }
    choice(parts);
    AfterVet.choice(foot, told.book()::firstAid)
        .ifPresent(
            then ->
                parts.add(
                    new BriefPart(
                        Kind.AFTER_VET, ChoicePart.afterVetHeading(told, then) + ".", "")));
    listed(parts, Kind.WORKABLE, "Also workable:", Verdict.WORKABLE);
    listed(parts, Kind.WITH_VET, "Only with the vet:", Verdict.WITH_VET);
    listed(parts, Kind.RULED_OUT, "Ruled out:", Verdict.RULED_OUT);
    String left =
        String.join(
            ", ",
            Numbers.counted(foot.findings().size(), "finding"),
            Numbers.counted(foot.cautions().size(), "caution"),
            Numbers.counted(foot.questions().size(), "open question") + ".");
    parts.add(new BriefPart(Kind.NEXT, "Left out here:", left));
    return parts;
  }

  /** Every call for now or today by name, each with what to do until the vet comes. */
  private void urgent(List<BriefPart> parts) {
    Set<String> before = new LinkedHashSet<>();
    for (ReferralGiven one : foot.calls()) {
      if (one.urgency().compareTo(Urgency.TODAY) <= 0) {
        String meanwhile = one.meanwhile() == null ? "" : told.phrases().says(one.meanwhile());
        String then = before.add(meanwhile) ? " " + meanwhile : "";
        parts.add(
            new BriefPart(
                Kind.REFERRAL,
                ReferralPart.heading(one.urgency()) + ":",
                (told.rule(one.rule()).title() + "." + then).strip()));
      }
    }
  }

  private void later(Urgency urgency, List<BriefPart> parts) {
    List<ReferralGiven> given =
        foot.calls().stream().filter(one -> one.urgency() == urgency).toList();
    if (!given.isEmpty()) {
      List<String> titles = given.stream().map(one -> told.rule(one.rule()).title()).toList();
      Statement meanwhile = parts.size() == 1 ? given.get(0).meanwhile() : null;
      String then = meanwhile == null ? "" : " " + told.phrases().says(meanwhile);
      String all = first(titles, titles.size());
      parts.add(
          new BriefPart(
              Kind.REFERRAL_LATER,
              ReferralPart.heading(urgency) + ":",
              all + then,
              first(titles, MOST_TITLES) + then,
              first(titles, MOST_TITLES),
              first(titles, 1)));
    }
  }

  private void provisional(List<BriefPart> parts) {
    List<String> open = ReferralPart.notLookedAt(foot);
    if (!open.isEmpty()) {
      parts.add(
          new BriefPart(
              Kind.PROVISIONAL,
              "PROVISIONAL:",
              "not looked at: " + first(open, MOST_SIGNS),
              Numbers.counted(open.size(), "sign") + " not looked at."));
    }
  }

  private void choice(List<BriefPart> parts) {
    Section choice = new ChoicePart(told).of(foot).get(0);
    Item first = choice.items().get(0);
    String why = new Item("", first.text(), List.of(), first.rule()).line();
    parts.add(new BriefPart(Kind.CHOICE, choice.heading() + ".", why, ""));
    for (Item kept : choice.items().subList(Math.min(1, choice.kept()), choice.kept())) {
      String text = new Item("", kept.text(), List.of(), kept.rule()).line();
      parts.add(new BriefPart(Kind.CHOICE, Sentence.capital(kept.lead()) + ":", text));
    }
  }

  private void listed(List<BriefPart> parts, Kind kind, String heading, Verdict verdict) {
    List<String> labels =
        ChoicePart.listed(told, foot, verdict).stream().map(one -> told.label(one.id())).toList();
    if (!labels.isEmpty()) {
      boolean every = labels.size() == foot.techniques().size();
      String all = every ? "every technique." : String.join(", ", labels) + ".";
      parts.add(new BriefPart(kind, heading, all, first(labels, 1)));
    }
  }

  /** The first so many, and how many more there are. */
  private static String first(List<String> all, int count) {
    int named = Math.min(count, all.size());
    int more = all.size() - named;
    return String.join("; ", all.subList(0, named)) + (more > 0 ? "; and " + more + " more." : ".");
  }
}
