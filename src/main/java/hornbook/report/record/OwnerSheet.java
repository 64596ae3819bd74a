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

/** What the owner takes home: ten plain lines for the horse, what calls the vet first. */
public final class OwnerSheet {
  /** Lines on a sheet. */
  public static final int LINES = 10;

  private final Entry entry;
  private final boolean recorded;
  private final UnaryOperator<String> labels;
  private final AdviceTree advice;

  private OwnerSheet(Entry entry, boolean recorded, UnaryOperator<String> labels) {
    this.entry = entry;
    this.recorded = recorded;
    this.labels = labels;
    this.advice = new AdviceTree(entry);
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
    List<String> facts = new ArrayList<>();
    Set<String> limbs = new LinkedHashSet<>();
    for (JsonNode foot : advice.feet()) {
      String limb = Entry.text(foot, "limb");
      facts.add(done(limb, entry.chose().get(limb)));
      limbs.add(AdviceTree.limb(limb));
    }
    OwnerCalls calls = OwnerCalls.of(advice.feet());
    facts.addAll(numbers(calls.any()));
    List<String> lines = lines(calls);
    String heading = String.join(" and ", limbs);
    return new RecordPage(
        "For the owner: " + EntryPage.title(entry),
        facts,
        List.of(calls.any() ? RecordPart.alarm(heading, lines) : RecordPart.of(heading, lines)),
        List.of("Farrier's advice, not a diagnosis. When in doubt, ring the vet."));
  }

  /** Whom to ring, as the local practice has it, where a vet is called. */
  private List<String> numbers(boolean called) {
    List<String> numbers = new ArrayList<>();
    for (JsonNode one : entry.rulebook().path("practice").path("emergency")) {
      numbers.add(Entry.text(one, "name") + ": " + Entry.text(one, "number"));
    }
    return called && !numbers.isEmpty()
        ? List.of("Whom to ring: " + String.join("; ", numbers) + ".")
        : List.of();
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

  private List<String> lines(OwnerCalls calls) {
    List<String> lines = new ArrayList<>(calls.lines());
    boolean unseen =
        advice.feet().stream().anyMatch(foot -> !AdviceTree.notLookedAt(foot).isEmpty());
    if (!calls.any() && unseen) {
      lines.add("Not everything was looked at today: if the horse worsens, ring the vet.");
    }
    Map<String, JsonNode> everyday = new LinkedHashMap<>();
    for (JsonNode foot : advice.feet()) {
      String limb = Entry.text(foot, "limb");
      everyday.put(AdviceTree.limb(limb), entry.ahead(limb).path("owner"));
    }
    lines.addAll(OwnerCare.lines(everyday, LINES - lines.size()));
    return lines;
  }
}
