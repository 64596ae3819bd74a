package hornbook.report.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.assessment.quantity.Units;
import hornbook.record.Departures;
import hornbook.record.Entry;
import hornbook.report.words.Amounts;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A referral letter: what was found, measured, seen and not seen, and what was done until the vet
 * comes. It names nothing that is a vet's to name.
 */
public final class VetLetter {
  /** Words that name what is a vet's to name, or guess at it. */
  private static final Pattern CONCLUDES =
      Pattern.compile(
          "(?i)laminitis|disease|infect|abscess|fracture|founder|suspect|likely|taken? (for|it)\\b");

  private static final Pattern CALLS = Pattern.compile("(Call|Have) the vet\\b");

  private final Entry entry;
  private final boolean recorded;
  private final AdviceTree advice;
  private final Amounts amounts;
  private final UnaryOperator<String> labels;
  private final List<RecordPart> parts = new ArrayList<>();

  private VetLetter(Entry entry, boolean recorded, Units units, UnaryOperator<String> labels) {
    this.entry = entry;
    this.recorded = recorded;
    this.advice = new AdviceTree(entry);
    this.amounts = new Amounts(units);
    this.labels = labels;
  }

  /**
   * The letter.
   *
   * @param recorded whether the entry tells what was done; else only what was seen is known
   */
  public static RecordPage of(
      Entry entry, boolean recorded, Units units, UnaryOperator<String> labels) {
    return new VetLetter(entry, recorded, units, labels).page();
  }

  private RecordPage page() {
    why();
    AssessmentRows rows = AssessmentRows.of(entry, amounts);
    if (rows != null) {
      parts.add(RecordPart.table("The horse and the visit", rows.horse()));
    } else {
      parts.add(
          RecordPart.of(
              "Measured and seen",
              List.of("This program can no longer read the assessment. Ask for it.")));
    }
    for (JsonNode foot : advice.feet()) {
      foot(foot, rows);
    }
    done();
    parts.add(
        RecordPart.of(
            "Please tell us",
            List.of(
                "What may be done to this foot, and when.",
                "What must not be done until you have seen it again.",
                "Whether the horse may work.")));
    List<String> facts = new ArrayList<>();
    if (entry.by() != null) {
      facts.add("From: " + entry.by() + ", farrier.");
    }
    return new RecordPage("Letter to the vet: " + EntryPage.title(entry), facts, parts, closing());
  }

  private void why() {
    List<String> calls = new ArrayList<>();
    List<String> mentions = new ArrayList<>();
    for (JsonNode foot : advice.feet()) {
      for (JsonNode referral : AdviceTree.all(foot, "referrals")) {
        String line =
            AdviceTree.limb(foot)
                + ": "
                + signs(foot, referral)
                + " ["
                + Entry.text(referral, "rule")
                + "]";
        if (AdviceTree.calls(referral)) {
          calls.add(AdviceTree.urgency(referral) + ", " + line);
        } else {
          mentions.add(line);
        }
      }
    }
    parts.add(RecordPart.alarm("Why this letter", calls));
    parts.add(RecordPart.of("For your information", mentions));
    if (calls.isEmpty()) {
      boolean open = advice.feet().stream().anyMatch(one -> !AdviceTree.notLookedAt(one).isEmpty());
      parts.add(
          RecordPart.of(
              "Why this letter",
              List.of(
                  open
                      ? "Nothing recorded called for you, but not everything was looked at."
                      : "Nothing recorded called for you; this is for your file.")));
    }
  }

  /** What was seen that its rule took up; an entry that does not keep it has only its words. */
  private String signs(JsonNode foot, JsonNode concluded) {
    JsonNode kept =
        entry
            .ahead(Entry.text(foot, "limb"))
            .path("signs")
            .path(String.valueOf(Entry.text(concluded, "rule")));
    List<String> signs = new ArrayList<>();
    kept.forEach(sign -> signs.add(sign.asText()));
    return signs.isEmpty()
        ? Entry.text(concluded, "says")
        : Sentence.capital(String.join("; ", signs)) + ".";
  }

  private void foot(JsonNode foot, AssessmentRows rows) {
    String limb = AdviceTree.limb(foot);
    List<String> findings = new ArrayList<>();
    for (JsonNode finding : AdviceTree.all(foot, "findings")) {
      if (finding.path("defect").asBoolean()) {
        String says = String.valueOf(Entry.text(finding, "says"));
        findings.add(CONCLUDES.matcher(says).find() ? signs(foot, finding) : says);
      }
    }
    parts.add(RecordPart.of(limb + ": findings", findings));
    int place = place(foot, rows);
    if (place < 0) {
      return;
    }
    parts.add(RecordPart.table(limb + ": measured", rows.measured(place)));
    parts.add(RecordPart.table(limb + ": seen and felt", rows.seen(place)));
    List<String> notSeen = rows.notSeen(place);
    parts.add(
        RecordPart.of(
            limb + ": not looked at",
            notSeen.isEmpty()
                ? List.of()
                : List.of(
                    Sentence.capital(String.join("; ", notSeen)) + ".",
                    "Not looked at is not the same as normal.")));
  }

  private static int place(JsonNode foot, AssessmentRows rows) {
    for (int at = 0; rows != null && at < rows.assessment().feet().size(); at++) {
      String limb = rows.assessment().feet().get(at).limb().word();
      if (limb.equals(Entry.text(foot, "limb"))) {
        return at;
      }
    }
    return -1;
  }

  private void done() {
    List<String> done = new ArrayList<>();
    if (recorded) {
      for (Map.Entry<String, String> one : entry.chose().entrySet()) {
        boolean nothing = one.getValue().equals(Departures.NOTHING);
        String what = nothing ? "nothing put on" : labels.apply(one.getValue());
        done.add(AdviceTree.limb(one.getKey()) + ": " + what + ".");
      }
      if (entry.done() != null) {
        done.add(entry.done());
      }
      if (entry.departs()) {
        done.add("This departs from the advice. Reason given: " + entry.because());
      }
    } else {
      done.add("Nothing is recorded as done to the feet at this visit.");
    }
    for (JsonNode foot : advice.feet()) {
      for (JsonNode referral : AdviceTree.all(foot, "referrals")) {
        String meanwhile = meanwhile(referral);
        String line = "Advised until you come: " + meanwhile;
        if (!meanwhile.isEmpty() && !done.contains(line)) {
          done.add(line);
        }
      }
    }
    parts.add(RecordPart.of("Done meanwhile", done));
  }

  /** What to do until the vet comes, without the call itself and without what it may be. */
  private static String meanwhile(JsonNode referral) {
    String meanwhile = Entry.text(referral, "meanwhile");
    return meanwhile == null
        ? ""
        : Sentence.split(meanwhile).stream()
            .filter(one -> !CALLS.matcher(one).lookingAt() && !CONCLUDES.matcher(one).find())
            .collect(Collectors.joining(" "));
  }

  private List<String> closing() {
    return List.of(
        "This letter reports what was seen and measured. It is not a diagnosis.",
        "Written with Hornbook, rule base "
            + Entry.text(entry.rulebook(), "version")
            + "; the rules are named in brackets.");
  }
}
