package hornbook.report.study;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.report.advice.PageHead;
import hornbook.report.advice.PracticePart;
import hornbook.report.page.LineWrap;
import hornbook.report.page.PlainPage;
import hornbook.report.page.Section;
import hornbook.report.page.TerminalStyle;
import hornbook.report.page.TextOptions;
import hornbook.report.page.TextSection;
import hornbook.report.words.ErrorLines;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.report.words.Sentence;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.contrast.CautionShift;
import hornbook.study.contrast.Contrast;
import hornbook.study.contrast.ContrastGoal;
import hornbook.study.contrast.FootContrasts;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes the contrasts of a foot as plain text. */
public final class ContrastText {
  private static final String LEFT_OUT =
      "Three things that affect one another, such as three changes to the wall, were not tried at once.";

  private final Phrases phrases;
  private final RuleWords words;
  private final FootContrasts one;
  private final ContrastWords contrasts;
  private final PlainPage page = new PlainPage();

  private ContrastText(FootContrasts one, Rulebook book, Phrases phrases) {
    this.one = one;
    this.phrases = phrases;
    this.words = new RuleWords(book, phrases);
    this.contrasts = new ContrastWords(book, phrases, one.foot());
  }

  /** One page for each foot. */
  public static String render(List<FootContrasts> all, Rulebook book, TextOptions options) {
    Phrases phrases = new Phrases(book, options.units());
    List<String> lines = new ArrayList<>();
    for (FootContrasts one : all) {
      new ContrastText(one, book, phrases).text().lines().forEach(lines::add);
      lines.add("");
    }
    List<FootAdvice> feet = all.stream().map(FootContrasts::foot).toList();
    Set<Limit> used = new LinkedHashSet<>();
    all.forEach(one -> used.addAll(one.errors()));
    for (Section practice : PracticePart.of(book, phrases, feet, used)) {
      lines.addAll(new TextSection(practice, options.width(), true).lines(TerminalStyle.NONE));
      lines.add("");
    }
    lines.addAll(LineWrap.lines(PageHead.SAFETY, options.width(), "", ""));
    return String.join("\n", lines) + "\n";
  }

  private String text() {
    String limb = Sentence.capital(FieldNames.of(one.foot().limb()));
    page.heading(limb + ": " + sought() + ".");
    page.paragraph(0, "As noted: " + asNoted() + ".");
    if (one.contrasts().isEmpty()) {
      page.paragraph(0, none());
    } else {
      page.paragraph(
          0,
          "The smallest changes, each tried in a second run. To try one, give its --set lines to"
              + " hornbook assess.");
    }
    int number = 0;
    for (CautionShift care : CautionShift.values()) {
      number = group(care, number);
    }
    if (one.more()) {
      page.heading("There are others, further away: --most N shows more.");
    }
    reckoned();
    return page.text();
  }

  private String sought() {
    String subject = one.goal().subject();
    if (subject == null) {
      return "what would change the advice";
    }
    boolean technique = one.foot().technique(subject) != null;
    String sought =
        switch (one.goal().kind()) {
          case ANY, FIRST_CHOICE -> "what would make this the first choice: ";
          case USABLE -> technique ? opening() : "what would make this workable: ";
          case REACHED -> technique ? "the first choice already: " : "workable already: ";
        };
    return sought + words.labels(List.of(subject));
  }

  private String opening() {
    return one.contrasts().isEmpty()
        ? "what would make this the first choice, or open it at least: "
        : "nothing makes this the first choice; this would open it: ";
  }

  private String asNoted() {
    String first =
        one.foot()
            .firstChoice()
            .map(OptionAdvice::id)
            .map(id -> "first choice " + words.labels(List.of(id)))
            .orElse("no first choice");
    String vet =
        one.foot().urgency().map(urgency -> "the vet " + RuleWords.soon(urgency)).orElse("no vet");
    return first + "; " + vet;
  }

  private String none() {
    if (one.goal().kind() == ContrastGoal.Kind.REACHED) {
      return "Without --to: what would change that.";
    }
    if (one.looked().isEmpty()) {
      return "Nothing was measured or seen on this foot, so nothing can be changed.";
    }
    String tried =
        "Nothing within a horse's possible range does: no one thing measured or seen, and no two"
            + (Double.isFinite(one.reach()) ? " together." : " or three together. " + LEFT_OUT);
    return one.goal().kind() == ContrastGoal.Kind.USABLE
        ? tried + " Why: hornbook why-not FILE " + one.goal().subject()
        : tried;
  }

  private int group(CautionShift care, int before) {
    List<Contrast> own = one.contrasts().stream().filter(c -> c.care() == care).toList();
    int number = before;
    if (!own.isEmpty()) {
      page.heading(heading(care));
    }
    for (Contrast contrast : own) {
      number++;
      contrast(contrast, number);
    }
    return number;
  }

  private static String heading(CautionShift care) {
    return switch (care) {
      case MORE -> "MORE CAUTIOUS ADVICE. Check these again first.";
      case OTHER -> "DIFFERENT ADVICE, equally cautious.";
      case LESS ->
          "LESS CAUTIOUS, and only valid if the horse really measures so. This shows what the advice rests on. It is no"
              + " target and no permission. Measure again only to be right, never to get there. If"
              + " two honest measurements differ, use the safer one. What called for the vet still"
              + " needs the vet.";
    };
  }

  private void contrast(Contrast contrast, int number) {
    String only = contrast.care() == CautionShift.LESS ? "only if truly " : "";
    String off = " (" + ContrastWords.off(contrast) + ")";
    page.hanging(0, 4, number + ". " + only + contrasts.changes(contrast) + off);
    contrasts.gives(contrast).forEach(line -> page.hanging(4, 6, "-> " + line));
    if (ContrastWords.callEases(contrast)) {
      page.hanging(4, 4, "The call stands until the vet has said that it is not so.");
    }
    contrast.settings().forEach(set -> page.asIs(4, "--set \"" + set + "\""));
  }

  private void reckoned() {
    page.heading("How it was calculated");
    List<Limit> errors =
        one.contrasts().stream()
            .flatMap(contrast -> contrast.changes().stream())
            .filter(change -> change.what().tool() != null)
            .map(change -> change.what().error())
            .toList();
    ErrorLines.of(errors, phrases).forEach(line -> page.hanging(2, 4, line));
    page.hanging(2, 4, counted());
    if (Double.isFinite(one.reach())) {
      page.hanging(
          2,
          4,
          "Three things together were tried as far as "
              + ContrastWords.off(one.reach())
              + " off, and not beyond.");
    }
    page.hanging(2, 4, LEFT_OUT);
    page.hanging(
        2,
        4,
        "Left as they are: "
            + one.fixed().stream().map(field -> field.label()).collect(Collectors.joining(", "))
            + ", and what is in the van.");
    int questions = one.foot().questions().size();
    if (questions > 0) {
      page.hanging(
          2,
          4,
          "What was not looked at is a question, not a change. There "
              + (questions == 1 ? "is 1" : "are " + questions)
              + ": hornbook assess lists them.");
    }
  }

  private String counted() {
    return "A grade or count errs by "
        + phrases.of(one.grade())
        + " ("
        + one.grade().basis().word()
        + "); a sign seen differently counts as "
        + phrases.of(one.word())
        + " measuring errors ("
        + one.word().basis().word()
        + ").";
  }
}
