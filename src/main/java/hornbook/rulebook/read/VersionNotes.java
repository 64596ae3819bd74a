package hornbook.rulebook.read;

import hornbook.rulebook.Version;
import hornbook.rulebook.VersionNote;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.YamlMap;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Reads what each version of a rule base changed. */
public final class VersionNotes {
  /** The file in the folder of the rules. */
  static final String FILE = "changes.yaml";

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

  static List<VersionNote> read(String text, List<RuleFault> faults) {
    List<VersionNote> notes = new ArrayList<>();
    for (YamlMap entry : YamlMap.list(FILE, text, faults)) {
      entry.only("version", "date", "says", "rules", "limits");
      VersionNote note =
          new VersionNote(
              entry.text("version"),
              entry.text("date"),
              List.copyOf(entry.texts("says")),
              List.copyOf(entry.texts("rules")),
              List.copyOf(entry.texts("limits")));
      if (!DAY.matcher(note.date()).matches()) {
        entry.fault(
            entry.line("date"), "date has to be year-month-day", "write it like 2026-11-25");
      }
      if (note.says().isEmpty()) {
        entry.fault(entry.line(), "the version says nothing", "write says: and a line with a dash");
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

  /** Holds the notes against the version they end in. */
  static void check(String text, String version, List<RuleFault> faults) {
    List<VersionNote> notes = read(text, faults);
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
}
