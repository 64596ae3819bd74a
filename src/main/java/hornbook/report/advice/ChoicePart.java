package hornbook.report.advice;

import hornbook.advice.AfterVet;
import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.HeldBack;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Verdict;
import hornbook.advice.outcome.NearEqual;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.DecidingReason;
import hornbook.report.words.Detail;
import hornbook.report.words.HeldWords;
import hornbook.report.words.PageContext;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/** The techniques: the first choice with its reasons, the others in a line each. */
final class ChoicePart {
  private final PageContext told;
  private final OptionLines lines;

  ChoicePart(PageContext told) {
    this.told = told;
    this.lines = new OptionLines(told);
  }

  List<Section> of(FootAdvice foot) {
    List<Section> sections = new ArrayList<>();
    sections.add(choice(foot));
    AfterVet.choice(foot, told.book()::firstAid).ifPresent(then -> sections.add(afterVet(then)));
    add(sections, foot, Kind.WORKABLE, "ALSO WORKABLE", Verdict.WORKABLE);
    add(sections, foot, Kind.WITH_VET, "ONLY WITH THE VET", Verdict.WITH_VET);
    add(sections, foot, Kind.RULED_OUT, "RULED OUT", Verdict.RULED_OUT);
    add(sections, foot, Kind.NOT_INDICATED, "NOT INDICATED", Verdict.NOT_INDICATED);
    return sections;
  }

  private void add(
      List<Section> sections, FootAdvice foot, Kind kind, String heading, Verdict verdict) {
    List<OptionAdvice> some = listed(told, foot, verdict);
    sections.addAll(
        Section.unlessEmpty(kind, heading, lines.of(DecidingReason.techniques(foot), some)));
  }

  /**
   * The techniques of this verdict. First aid that nothing calls for is closed on every foot, and
   * only the full page says so.
   */
  static List<OptionAdvice> listed(PageContext told, FootAdvice foot, Verdict verdict) {
    return foot.techniques().stream()
        .filter(one -> one.verdict() == verdict)
        .filter(one -> told.detail() == Detail.FULL || open(one) || !told.book().firstAid(one.id()))
        .toList();
  }

  private static boolean open(OptionAdvice judged) {
    return judged.verdict().open()
        || judged.reasons().stream().anyMatch(reason -> reason.bearing() == Bearing.FOR);
  }

  private Section choice(FootAdvice foot) {
    if (foot.firstChoice().isEmpty()) {
      return new Section(Kind.CHOICE, "NO FIRST CHOICE", List.of(Item.of(whyNone(foot))));
    }
    OptionAdvice chosen = foot.firstChoice().get();
    List<Item> reasons = with(chosen, Bearing.FOR);
    List<Item> items = new ArrayList<>(reasons.subList(0, 1));
    items.addAll(with(chosen, Bearing.NEEDS));
    items.addAll(with(chosen, Bearing.AGAINST));
    NearEqual.of(told.advice(), foot).ifPresent(near -> items.add(close(near)));
    int kept = items.size();
    items.addAll(reasons.subList(1, reasons.size()));
    return new Section(Kind.CHOICE, Section.CHOSEN + ": " + told.label(chosen.id()), items, kept);
  }

  private Item close(NearEqual near) {
    String held =
        Subjects.label(near.reading().what())
            + " "
            + told.phrases().apart(near.reading(), near.limit())
            + ", limit "
            + told.phrases().groundedLimit(near.limit());
    String chosen = told.label(near.chosen());
    String then =
        near.other() == null
            ? "; measure again before choosing " + chosen + "."
            : "; %s and %s are near equal here, so measure again before choosing."
                .formatted(chosen, told.label(near.other()));
    return Item.of("close", held + then);
  }

  /** What comes first once the vet has looked, and what has to be done before it. */
  private Section afterVet(OptionAdvice then) {
    List<Item> items = new ArrayList<>(with(then, Bearing.NEEDS));
    items.addAll(with(then, Bearing.AGAINST));
    int kept = items.size();
    items.add(with(then, Bearing.FOR).get(0));
    return new Section(Kind.AFTER_VET, afterVetHeading(told, then), items, kept);
  }

  /** {@code ONCE THE VET HAS LOOKED: a nailed shoe}. */
  static String afterVetHeading(PageContext told, OptionAdvice then) {
    String once =
        then.reasons().stream()
            .map(ReasonGiven::heldBack)
            .filter(Objects::nonNull)
            .max(Comparator.comparing(HeldBack::until))
            .map(held -> HeldWords.once(held.until(), held.days()))
            .orElse("once the vet agrees");
    return once.toUpperCase(Locale.ROOT) + ": " + told.label(then.id());
  }

  private List<Item> with(OptionAdvice judged, Bearing bearing) {
    return judged.reasons().stream()
        .filter(reason -> reason.bearing() == bearing)
        .map(this::item)
        .toList();
  }

  private Item item(ReasonGiven reason) {
    String says = told.grounded(reason.says(), reason.basis());
    return new Item(OptionLines.bearing(reason.bearing()), says, List.of(), reason.rule());
  }

  private String whyNone(FootAdvice foot) {
    Urgency urgency = foot.urgency().orElse(Urgency.MENTION);
    if (urgency == Urgency.NOW && listed(told, foot, Verdict.WITH_VET).isEmpty()) {
      return listed(told, foot, Verdict.WORKABLE).isEmpty()
          ? "Nothing goes on this foot until the vet has seen the horse."
          : "First aid only until the vet has seen the horse.";
    }
    if (urgency.compareTo(Urgency.TODAY) <= 0) {
      return "The vet comes first. Settle with the vet what goes on the foot.";
    }
    if (!listed(told, foot, Verdict.WORKABLE).isEmpty()) {
      return "No single technique deals with everything found here: " + defects(foot) + ".";
    }
    if (!listed(told, foot, Verdict.WITH_VET).isEmpty()) {
      return "Settle with the vet first what can be done here.";
    }
    if (!listed(told, foot, Verdict.RULED_OUT).isEmpty()) {
      return "No technique in the rules fits this foot as it is.";
    }
    return foot.techniques().get(0).reasons().stream()
        .filter(reason -> reason.bearing() == Bearing.NEEDS_VET)
        .findFirst()
        .map(reason -> told.grounded(reason.says(), reason.basis()))
        .orElse("Nothing recorded supports any technique.");
  }

  private String defects(FootAdvice foot) {
    return foot.findings().stream()
        .filter(FindingGiven::defect)
        .map(finding -> told.book().findings().get(finding.id()).label())
        .collect(Collectors.joining("; "));
  }
}
