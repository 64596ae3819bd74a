package hornbook.report.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.record.Departures;
import hornbook.record.Entry;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What the owner takes home: at most ten plain lines for a foot, what calls the vet first. */
public final class OwnerSheet {
  /** Lines on a sheet. */
  public static final int LINES = 10;

  private static final String WHAT_TO_DO = "What to do: ";

  /** What makes room for a call for the vet, the first of them first. */
  private static final List<String> GIVES_WAY =
      List.of(
          "owner.pick-out",
          "owner.nothing-on",
          "owner.chips",
          "owner.clenches",
          "owner.brush-out",
          "owner.soft-ground",
          "owner.edges");

  private final Entry entry;
  private final boolean recorded;
  private final UnaryOperator<String> labels;

  private OwnerSheet(Entry entry, boolean recorded, UnaryOperator<String> labels) {
    this.entry = entry;
    this.recorded = recorded;
    this.labels = labels;
  }

  /**
   * The sheet.
   *
   * @param recorded whether the entry tells what was done; else what the advice puts first
   */
  public static RecordPage of(Entry entry, boolean recorded, UnaryOperator<String> labels) {
    return new OwnerSheet(entry, recorded, labels).page();
  }

  private RecordPage page() {
    Map<List<String>, Set<String>> feet = new LinkedHashMap<>();
    List<String> facts = new ArrayList<>();
    for (JsonNode foot : new AdviceTree(entry).feet()) {
      String limb = Entry.text(foot, "limb");
      facts.add(done(limb, entry.chose().get(limb)));
      feet.computeIfAbsent(lines(foot), lines -> new LinkedHashSet<>()).add(AdviceTree.limb(limb));
    }
    facts.addAll(numbers(feet.keySet()));
    List<RecordPart> parts = new ArrayList<>();
    feet.forEach(
        (lines, limbs) -> {
          String heading = String.join(" and ", limbs);
          parts.add(
              called(lines) ? RecordPart.alarm(heading, lines) : RecordPart.of(heading, lines));
        });
    return new RecordPage(
        "For the owner: " + EntryPage.title(entry),
        facts,
        parts,
        List.of("Farrier's advice, not a diagnosis. When in doubt, ring the vet."));
  }

  /** Whom to ring, as the local practice has it, where a vet is called. */
  private List<String> numbers(Set<List<String>> feet) {
    List<String> numbers = new ArrayList<>();
    boolean called = feet.stream().anyMatch(OwnerSheet::called);
    for (JsonNode one : entry.rulebook().path("practice").path("emergency")) {
      numbers.add(Entry.text(one, "name") + ": " + Entry.text(one, "number"));
    }
    return called && !numbers.isEmpty()
        ? List.of("Whom to ring: " + String.join("; ", numbers) + ".")
        : List.of();
  }

  private static boolean called(List<String> lines) {
    return lines.stream().anyMatch(line -> line.startsWith(WHAT_TO_DO));
  }

  private String done(String limb, String technique) {
    String foot = Sentence.capital(AdviceTree.limb(limb));
    if (technique == null) {
      return foot + ": looked at; nothing is recorded as done.";
    }
    if (technique.equals(Departures.NOTHING)) {
      return foot + ": nothing was put on.";
    }
    return foot + (recorded ? ": done today: " : ": advised: ") + labels.apply(technique) + ".";
  }

  private List<String> lines(JsonNode foot) {
    List<String> lines = new ArrayList<>(calls(foot));
    List<JsonNode> everyday = new ArrayList<>();
    entry.ahead(Entry.text(foot, "limb")).path("owner").forEach(everyday::add);
    for (String id : GIVES_WAY) {
      if (lines.size() + everyday.size() > LINES) {
        everyday.removeIf(line -> id.equals(Entry.text(line, "id")));
      }
    }
    everyday.forEach(line -> lines.add(Entry.text(line, "says")));
    return lines.size() > LINES ? lines.subList(0, LINES) : lines;
  }

  /** Who has to come and how soon, and what to do until then. */
  private static List<String> calls(JsonNode foot) {
    List<String> calls = new ArrayList<>();
    List<String> meanwhile = new ArrayList<>();
    for (JsonNode referral : AdviceTree.all(foot, "referrals")) {
      if (AdviceTree.calls(referral)) {
        calls.add(call(referral) + " " + Entry.text(referral, "says"));
        String until = Entry.text(referral, "meanwhile");
        if (until != null && !meanwhile.contains(until)) {
          meanwhile.add(until);
        }
      }
    }
    if (calls.isEmpty()) {
      return AdviceTree.notLookedAt(foot).isEmpty()
          ? List.of()
          : List.of("Not everything was looked at today: if the horse worsens, ring the vet.");
    }
    meanwhile.forEach(until -> calls.add(WHAT_TO_DO + until));
    return calls;
  }

  private static String call(JsonNode referral) {
    return switch (String.valueOf(Entry.text(referral, "urgency"))) {
      case "now" -> "Ring the vet NOW.";
      case "today" -> "Have the vet see the horse TODAY.";
      default -> "Have the vet see the horse within days.";
    };
  }
}
