package hornbook.rulebook.read;

import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Version;
import hornbook.rulebook.VersionNote;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.YamlMap;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/** Reads what each version of a rule base changed. */
public final class VersionNotes {
  /** The file in the folder of the rules. */
  public static final String FILE = "changes.yaml";

  private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  private VersionNotes() {}

  /** Those of a folder of rules, the newest first; none where nobody wrote them down. */
  public static List<VersionNote> read(Path folder) throws IOException, RuleBaseFaulty {
    Path file = folder.resolve(FILE);
    List<RuleFault> faults = new ArrayList<>();
    List<VersionNote> notes =
        Files.isRegularFile(file) ? read(Files.readString(file), faults) : List.of();
    if (!faults.isEmpty()) {
      throw new RuleBaseFaulty(faults);
    }
    return notes;
  }

  public static List<VersionNote> read(String text, List<RuleFault> faults) {
    List<VersionNote> notes = new ArrayList<>();
    for (YamlMap entry : YamlMap.list(FILE, text, faults)) {
      entry.only("version", "date", "says", "rules", "limits", "all");
      VersionNote note =
          new VersionNote(
              entry.text("version"),
              entry.text("date"),
              List.copyOf(entry.texts("says")),
              List.copyOf(entry.texts("rules")),
              List.copyOf(entry.texts("limits")),
              entry.has("all") ? (int) entry.number("all") : 0);
      if (!DAY.matcher(note.date()).matches()) {
        entry.fault(
            entry.line("date"), "date has to be year-month-day", "write it like 2026-11-25");
      }
      if (note.says().isEmpty()) {
        entry.fault(entry.line(), "the version is empty", "write says: and a line with a dash");
      }
      boolean falling =
          notes.isEmpty() || Version.later(notes.get(notes.size() - 1).version(), note.version());
      if (!Version.known(note.version()) || !falling) {
        entry.fault(
            entry.line("version"),
            "version " + note.version() + " does not stand below a later one",
            "write versions like 1.0.0, the newest first");
      }
      notes.add(note);
    }
    return List.copyOf(notes);
  }

  /**
   * Holds the notes against the version they end in, and every rule against the note of the version
   * it came with.
   */
  static void check(
      String text, String version, Collection<RuleEntry> rules, List<RuleFault> faults) {
    List<VersionNote> notes = read(text, faults);
    for (RuleEntry rule : rules) {
      notes.stream()
          .filter(note -> note.version().equals(rule.since()))
          .findFirst()
          .ifPresentOrElse(
              note -> named(rule, note, notes, faults),
              () -> faults.add(unnamed(rule, FILE + " has no version " + rule.since())));
    }
    VersionNote oldest = notes.isEmpty() ? null : notes.get(notes.size() - 1);
    if (oldest != null && oldest.all() > 0) {
      beyond(oldest, rules, faults);
    }
    if (!notes.isEmpty() && !notes.get(0).version().equals(version)) {
      faults.add(
          new RuleFault(
              FILE,
              1,
              "",
              "the newest version here is " + notes.get(0).version() + ", the rules are " + version,
              "write down what " + version + " changed"));
    }
  }

  private static void named(
      RuleEntry rule, VersionNote note, List<VersionNote> notes, List<RuleFault> faults) {
    boolean oldest = note.equals(notes.get(notes.size() - 1));
    boolean all = oldest && note.rules().isEmpty();
    if (!all && !note.rules().contains(rule.id())) {
      faults.add(unnamed(rule, FILE + " does not name the rule under version " + note.version()));
    }
  }

  private static RuleFault unnamed(RuleEntry rule, String says) {
    return new RuleFault(
        rule.file(),
        rule.line(),
        rule.id(),
        "since is " + rule.since() + ", but " + says,
        "write down there what the version changed, with rules: [" + rule.id() + "]");
  }

  /** A rule that is put into a version which is out is not noticed by anybody who has it. */
  private static void beyond(
      VersionNote oldest, Collection<RuleEntry> rules, List<RuleFault> faults) {
    long since = rules.stream().filter(rule -> rule.since().equals(oldest.version())).count();
    if (since > oldest.all()) {
      faults.add(
          new RuleFault(
              FILE,
              0,
              "",
              since + " rules are since " + oldest.version() + ", which had " + oldest.all(),
              "give a new rule the next version, and write down there what it changes"));
    }
  }
}
