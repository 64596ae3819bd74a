package hornbook.report.study;

import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
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
import hornbook.report.words.PlainWords;
import hornbook.report.words.RuleWords;
import hornbook.report.words.Sentence;
import hornbook.report.words.Shares;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Urgency;
import hornbook.study.confidence.Confidence;
import hornbook.study.confidence.Confidence.Retake;
import hornbook.study.measure.Measurement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes how steady the advice is under measuring error, as plain text. */
public final class ConfidenceText {
  private final Rulebook book;
  private final Phrases phrases;
  private final RuleWords words;
  private final Confidence one;
  private final PlainPage page = new PlainPage();

  private ConfidenceText(Confidence one, Rulebook book, TextOptions options) {
    this.one = one;
    this.book = book;
    this.phrases = new Phrases(book, options.units());
    this.words = new RuleWords(book, phrases);
  }

  /** One page for each foot. */
  public static String render(List<Confidence> all, Rulebook book, TextOptions options) {
    StringBuilder text = new StringBuilder();
    for (Confidence one : all) {
      text.append(new ConfidenceText(one, book, options).text()).append('\n');
    }
    List<FootAdvice> feet = all.stream().map(Confidence::foot).toList();
    Set<Limit> drawn = new LinkedHashSet<>();
    all.forEach(one -> drawn.addAll(one.errorsDrawn()));
    for (Section practice :
        PracticePart.of(book, new Phrases(book, options.units()), feet, drawn)) {
      new TextSection(practice, options.width(), true)
          .lines(TerminalStyle.NONE)
          .forEach(line -> text.append(line).append('\n'));
      text.append('\n');
    }
    LineWrap.lines(PageHead.SAFETY, options.width(), "", "")
        .forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }

  private String text() {
    String foot = Sentence.capital(FieldNames.of(one.foot().limb()));
    page.heading(foot + ": how steady the advice is. " + one.runs() + " runs, seed " + one.seed());
    if (one.measurements().isEmpty()) {
      page.paragraph(
          0, "Nothing was measured on this horse, so no measuring error can change the advice.");
      return page.text();
    }
    page.paragraph(
        0,
        "If the measurements were repeated with the errors below, all verdicts and calls for the vet"
            + " would come out the same in "
            + Shares.of(one.steady())
            + " of the runs.");
    choices();
    verdicts();
    referrals();
    findings();
    retake();
    errors();
    return page.text();
  }

  private void choices() {
    Map<String, Double> named = new LinkedHashMap<>();
    one.firstChoice().forEach((id, share) -> named.put(choice(id), share));
    page.heading("First choice: " + Shares.line(named));
  }

  private String choice(String id) {
    return id.equals(Confidence.NONE) ? "none" : words.labels(List.of(id));
  }

  /** Those that stood in every run are counted, not listed. */
  private void verdicts() {
    Map<String, Map<Verdict, Double>> all = new LinkedHashMap<>(one.techniques());
    all.putAll(one.supports());
    List<String> lines = new ArrayList<>();
    all.forEach(
        (id, shares) -> {
          if (shares.size() > 1) {
            Map<String, Double> spoken = new LinkedHashMap<>();
            shares.forEach((verdict, share) -> spoken.put(PlainWords.of(verdict.word()), share));
            lines.add(words.labels(List.of(id)) + ": " + Shares.line(spoken));
          }
        });
    int steady = all.size() - lines.size();
    page.heading("Verdicts (" + steady + " of " + all.size() + " are the same in every run)");
    lines.forEach(line -> page.hanging(2, 4, line));
  }

  private void referrals() {
    page.heading("Calls for the vet");
    if (one.referrals().isEmpty()) {
      page.paragraph(2, "none in any run");
    }
    Shares.greatestFirst(one.referrals())
        .forEach(
            (id, share) ->
                page.hanging(2, 4, PlainWords.of(id) + soon(id) + ": " + Shares.of(share)));
  }

  private String soon(String id) {
    return one.foot().referrals().stream()
        .filter(referral -> referral.id().equals(id))
        .map(referral -> referral.urgency())
        .map(urgency -> ", " + spoken(urgency))
        .findFirst()
        .orElse(", not on the page");
  }

  private static String spoken(Urgency urgency) {
    return urgency == Urgency.MENTION ? "a mention" : RuleWords.soon(urgency);
  }

  private void findings() {
    Map<String, Double> open = new LinkedHashMap<>();
    int always = 0;
    for (Map.Entry<String, Double> share : one.findings().entrySet()) {
      if (share.getValue() < 1) {
        open.put(book.findings().get(share.getKey()).label(), share.getValue());
      } else {
        always++;
      }
    }
    page.heading("Found (" + always + " in every run)");
    Shares.greatestFirst(open)
        .forEach((label, share) -> page.hanging(2, 4, label + ": " + Shares.of(share)));
  }

  private void retake() {
    if (one.retake().isEmpty()) {
      page.heading("No one measure decides it.");
      return;
    }
    page.heading("Worth measuring again, because these decide it");
    for (Retake again : one.retake()) {
      Measurement measurement = again.measurement();
      page.hanging(
          2,
          4,
          named(measurement)
              + " = "
              + value(measurement, measurement.value())
              + ", ± "
              + error(measurement)
              + ": measuring it exactly would settle "
              + Shares.of(again.explains())
              + " of the changes; it changes "
              + turned(again.decides()));
    }
    page.paragraph(
        2,
        "Measure to know, not until it fits. If two honest measurements differ, use the safer one.");
  }

  /** Trade words, and the fields of the file. */
  private static String named(Measurement measurement) {
    return FieldNames.of(measurement.path()) + " (" + String.join(", ", measurement.paths()) + ")";
  }

  private String value(Measurement measurement, double kept) {
    return phrases.amounts().text(kept, measurement.kind().dimension().kept().symbol());
  }

  private String error(Measurement measurement) {
    Limit error = measurement.error();
    return phrases.amounts().gap(error.value(), error.unit());
  }

  private String turned(List<String> ids) {
    List<String> labels = new ArrayList<>();
    for (String id : ids) {
      boolean judged = book.technique(id) != null || book.support(id) != null;
      labels.add(judged ? words.labels(List.of(id)) : "the call for the vet: " + PlainWords.of(id));
    }
    return String.join("; ", labels);
  }

  private void errors() {
    page.heading("How it was calculated");
    ErrorLines.of(one.errorsDrawn(), phrases).forEach(line -> page.hanging(2, 4, line));
    Limit deviations = one.errors().deviations();
    Limit shared = one.errors().shared();
    page.paragraph(
        2,
        "Errors are drawn from a normal distribution, a stated error taken as "
            + phrases.of(deviations)
            + " standard deviations ("
            + deviations.basis().word()
            + "); "
            + phrases.of(shared)
            + " of the variance is shared by all that one tool measured ("
            + shared.basis().word()
            + "). What was seen, counted or reported is kept as noted.");
  }
}
