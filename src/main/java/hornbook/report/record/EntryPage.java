package hornbook.report.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.assessment.quantity.Units;
import hornbook.record.Departure;
import hornbook.record.Departures;
import hornbook.record.Entry;
import hornbook.record.Photo;
import hornbook.report.advice.PageHead;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;

/** One entry of the daybook as a page. */
public final class EntryPage {
  private final Entry entry;
  private final AdviceTree advice;
  private final Amounts amounts;
  private final UnaryOperator<String> labels;
  private final List<RecordPart> parts = new ArrayList<>();

  private EntryPage(Entry entry, Units units, UnaryOperator<String> labels) {
    this.entry = entry;
    this.advice = new AdviceTree(entry);
    this.amounts = new Amounts(units);
    this.labels = labels;
  }

  /**
   * The page.
   *
   * @param correctedBy the entry that puts this one right; 0 for none
   * @param labels the name of a technique in words of the trade
   */
  public static RecordPage of(
      Entry entry, int correctedBy, Units units, UnaryOperator<String> labels) {
    return new EntryPage(entry, units, labels).page(correctedBy);
  }

  /** {@code Entry 12: Tansy, 18 April 2026}. */
  static String title(Entry entry) {
    String horse = entry.horse() == null ? "a horse" : entry.horse();
    String day = entry.visited() == null ? "" : ", " + PageHead.spoken(entry.visited());
    return horse + day;
  }

  private RecordPage page(int correctedBy) {
    if (correctedBy > 0) {
      parts.add(
          RecordPart.alarm(
              "Corrected later",
              List.of("Entry " + correctedBy + " corrects this entry. Read that one.")));
    }
    chosen();
    parts.add(RecordPart.of("Done", filled(entry.done())));
    parts.add(RecordPart.of("Outcome", filled(entry.outcome())));
    for (JsonNode foot : advice.feet()) {
      given(foot);
    }
    noted();
    sheet();
    parts.add(RecordPart.of("Pictures", entry.photos().stream().map(EntryPage::photo).toList()));
    return new RecordPage(
        "Entry " + entry.number() + ": " + title(entry), facts(), parts, closing());
  }

  private static List<String> filled(String text) {
    return text == null ? List.of() : List.of(text);
  }

  private List<String> facts() {
    List<String> facts = new ArrayList<>();
    String by = entry.by() == null ? "" : " by " + entry.by();
    if (entry.written() != null) {
      facts.add("Written " + entry.written() + by + ".");
    } else if (entry.by() != null) {
      facts.add("Written" + by + ".");
    }
    if (entry.corrects() != null) {
      facts.add("Corrects entry " + entry.corrects() + ".");
    }
    return facts;
  }

  private void chosen() {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, String> one : entry.chose().entrySet()) {
      String technique = one.getValue();
      String verdict =
          advice.feet().stream()
              .filter(foot -> one.getKey().equals(Entry.text(foot, "limb")))
              .map(foot -> AdviceTree.verdict(foot, technique))
              .filter(Objects::nonNull)
              .findFirst()
              .map(word -> " (" + word + " in the advice)")
              .orElse("");
      lines.add(AdviceTree.limb(one.getKey()) + ": " + label(technique) + verdict + ".");
    }
    parts.add(RecordPart.of("Chosen", lines));
    List<String> departs = new ArrayList<>();
    List<String> forbidden = new ArrayList<>();
    for (Departure one : entry.departures()) {
      departs.add(AdviceTree.limb(one.foot()) + ": " + one.says());
      one.forbidden().forEach(line -> forbidden.add(AdviceTree.limb(one.foot()) + ": " + line));
    }
    if (!departs.isEmpty() || entry.because() != null) {
      departs.add("Reason given: " + (entry.because() == null ? "none" : entry.because()));
    }
    parts.add(RecordPart.of(entry.departs() ? "Departs from the advice" : "Why", departs));
    parts.add(RecordPart.alarm("A call for the vet forbids this", forbidden));
  }

  private String label(String technique) {
    return technique.equals(Departures.NOTHING) ? "nothing put on" : labels.apply(technique);
  }

  /** The advice on a foot, as it was given that day. */
  private void given(JsonNode foot) {
    List<String> lines = new ArrayList<>();
    for (JsonNode referral : AdviceTree.all(foot, "referrals")) {
      lines.add(
          AdviceTree.urgency(referral)
              + ": "
              + Entry.text(referral, "says")
              + " ["
              + Entry.text(referral, "rule")
              + "]");
    }
    String first = Entry.text(foot, "firstChoice");
    lines.add(first == null ? "No first choice." : "First choice: " + labels.apply(first) + ".");
    listed("Workable", "workable", foot, lines);
    listed("Only with the vet", "with-vet", foot, lines);
    listed("Ruled out", "ruled-out", foot, lines);
    listed("Not indicated", "not-indicated", foot, lines);
    for (JsonNode finding : AdviceTree.all(foot, "findings")) {
      if (finding.path("defect").asBoolean()) {
        lines.add(
            "Found: "
                + Entry.text(finding, "label")
                + ". "
                + Entry.text(finding, "says")
                + " ["
                + Entry.text(finding, "rule")
                + "]");
      }
    }
    List<String> open = AdviceTree.notLookedAt(foot);
    if (!open.isEmpty()) {
      lines.add("Provisional; not looked at: " + String.join("; ", open) + ".");
    }
    parts.add(RecordPart.of("Advice as it was given: " + AdviceTree.limb(foot), lines));
  }

  private void listed(String heading, String verdict, JsonNode foot, List<String> lines) {
    List<String> named = AdviceTree.techniques(foot, verdict).stream().map(labels).toList();
    if (!named.isEmpty()) {
      lines.add(heading + ": " + String.join("; ", named) + ".");
    }
  }

  private void noted() {
    AssessmentRows rows = AssessmentRows.of(entry, amounts);
    if (rows == null) {
      parts.add(
          RecordPart.of(
              "Noted", List.of("This program can no longer read the assessment. See the file.")));
      return;
    }
    parts.add(RecordPart.table("Noted of horse and visit", rows.horse()));
    for (int foot = 0; foot < rows.assessment().feet().size(); foot++) {
      String limb = FieldNames.of(rows.assessment().feet().get(foot).limb());
      parts.add(RecordPart.table("Measured: " + limb, rows.measured(foot)));
      parts.add(RecordPart.table("Seen: " + limb, rows.seen(foot)));
    }
  }

  /** The sentences of the job sheet that was kept. */
  private void sheet() {
    List<String> lines = new ArrayList<>();
    entry
        .plan()
        .path("sheet")
        .forEach(part -> part.forEach(line -> lines.add(Entry.text(line, "says"))));
    String foot = Entry.text(entry.plan(), "foot");
    String technique = Entry.text(entry.plan(), "technique");
    if (technique != null) {
      parts.add(
          RecordPart.of(
              "Job sheet: " + labels.apply(technique) + ", " + AdviceTree.limb(foot), lines));
    }
  }

  private static String photo(Photo photo) {
    String name = photo.name() == null ? "" : " (" + photo.name() + ")";
    return photo.file() + name;
  }

  private List<String> closing() {
    List<String> closing = new ArrayList<>();
    String practice = Entry.text(entry.rulebook().path("practice"), "name");
    closing.add(
        Sentence.capital("rule base ")
            + Entry.text(entry.rulebook(), "version")
            + ", "
            + Entry.text(entry.rulebook(), "digest")
            + (practice == null ? "." : "; local practice: " + practice + "."));
    if (entry.digest() != null) {
      closing.add("This entry: " + entry.digest() + ".");
    }
    if (entry.previous() != null) {
      closing.add("The one before: " + entry.previous() + ".");
    }
    closing.add(PageHead.SAFETY);
    return closing;
  }
}
