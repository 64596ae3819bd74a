package hornbook.rulebook.start;

import hornbook.rulebook.VersionNote;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.read.VersionNotes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The version a new rule of a whole rule base comes with: the newest one where that names the rules
 * it adds, else the one after it.
 */
final class NextVersion {
  private static final Pattern VERSION = Pattern.compile("(?m)^version: *(\\d+)\\.(\\d+)\\.\\d+");
  private static final String ENTRY = "- version:";

  private final String head;
  private final String changes;
  private final boolean begun;
  private final String number;

  NextVersion(String head, String changes) {
    this.head = head;
    this.changes = changes;
    List<RuleFault> unread = new ArrayList<>();
    List<VersionNote> notes = changes.isEmpty() ? List.of() : VersionNotes.read(changes, unread);
    Matcher version = VERSION.matcher(head);
    boolean known = version.find();
    begun = notes.isEmpty() || notes.size() > 1 && !notes.get(0).rules().isEmpty();
    number =
        begun || !known
            ? known ? version.group().replaceFirst("version: *", "") : "1.0.0"
            : version.group(1) + "." + (Integer.parseInt(version.group(2)) + 1) + ".0";
  }

  String number() {
    return number;
  }

  /** The head and the changes as they are with the rule. */
  Map<String, String> files(StarterText rule, LocalDate today) {
    String raised = VERSION.matcher(head).replaceFirst("version: " + number);
    if (changes.isEmpty()) {
      return Map.of(RuleFiles.HEAD, raised);
    }
    return Map.of(
        RuleFiles.HEAD, raised, VersionNotes.FILE, begun ? named(rule) : entry(rule, today));
  }

  /** The newest entry with the rule and its limit among those it names. */
  private String named(StarterText rule) {
    int end = changes.indexOf("\n" + ENTRY, changes.indexOf(ENTRY) + 1);
    String newest = end < 0 ? changes : changes.substring(0, end);
    String with = listed(listed(newest, "rules", rule.id()), "limits", rule.limitId());
    return with + changes.substring(newest.length());
  }

  private static String listed(String entry, String key, String name) {
    Matcher list = Pattern.compile("(?m)^  " + key + ": *\\[([^\\]]*)\\]").matcher(entry);
    return list.replaceFirst(
        found -> "  " + key + ": [" + (found.group(1).isBlank() ? "" : "$1, ") + name + "]");
  }

  private String entry(StarterText rule, LocalDate today) {
    String entry =
        String.format(
            Locale.ROOT,
            """
            - version: %s
              date: %s
              says:
                - Say here what a farrier will notice of %s.
              rules: [%s]
              limits: [%s]
            """,
            number,
            today,
            rule.id(),
            rule.id(),
            rule.limitId());
    int first = Math.max(0, changes.indexOf(ENTRY));
    return changes.substring(0, first) + entry + changes.substring(first);
  }
}
