package hornbook.rulebook.own;

import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.load.ShippedRules;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files of a new rule of one's own: rule, text, limit, and the case with the foot that fires it
 * and the one change that silences it. They hold together from the start; the author then changes
 * one thing at a time.
 */
public final class RuleStarter {
  private static final Pattern ID = Pattern.compile("@id\\((\\w)(\\d{3})\\)");

  /** What a topic may be called. */
  public static final Pattern TOPIC = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private final Path folder;
  private final String topic;
  private final String title;

  /**
   * For a rule of a topic in a folder, which may not be there yet.
   *
   * @param title in words of the trade, or null for one to be replaced
   */
  public RuleStarter(Path folder, String topic, String title) {
    this.folder = folder;
    this.topic = topic;
    this.title = title;
  }

  /** The files to write, by their name in the folder; those that are there already are added to. */
  public Map<String, String> files() throws java.io.IOException {
    String head = text(RuleFiles.HEAD);
    String letter = letter(head);
    String id = letter + String.format(Locale.ROOT, "%03d", highest(letter) + 1);
    String limit = topic + "." + id.toLowerCase(Locale.ROOT) + ".days";
    String shown = title == null ? "Too long since the last visit, " + id : title;
    Map<String, String> files = new LinkedHashMap<>();
    files.put(RuleFiles.HEAD, head(head, letter));
    String group = topic + "/" + id.toLowerCase(Locale.ROOT);
    files.put(group + ".drl", rule(id, shown.replace('"', '\''), limit));
    files.put(group + ".yaml", saying(id));
    String limits = text(topic + "/limits.yaml");
    files.put(topic + "/limits.yaml", limits + (limits.isEmpty() ? "" : "\n") + limit(limit));
    files.put("cases/rules/" + id + ".yaml", example(id, shown, limit));
    return files;
  }

  private String text(String name) throws java.io.IOException {
    Path file = folder.resolve(name);
    return Files.isRegularFile(file) ? Files.readString(file).replace("\r\n", "\n") : "";
  }

  /** The letter the topic has, or the first of its own that is free. */
  private String letter(String head) {
    Matcher known =
        Pattern.compile("(?m)^  " + Pattern.quote(topic) + ": *\\{ *letter: *(\\w)").matcher(head);
    if (known.find()) {
      return known.group(1);
    }
    List<String> free = new ArrayList<>(Extension.freeLetters(ShippedRules.book()));
    Matcher taken = Pattern.compile("letter: *(\\w)").matcher(head);
    while (taken.find()) {
      free.remove(taken.group(1));
    }
    for (char one : topic.toUpperCase(Locale.ROOT).toCharArray()) {
      if (free.contains(String.valueOf(one))) {
        return String.valueOf(one);
      }
    }
    return free.get(free.size() - 1);
  }

  private int highest(String letter) throws java.io.IOException {
    int highest = 0;
    List<RuleFault> unread = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      for (String text : RuleFiles.read(folder, unread).texts().values()) {
        Matcher id = ID.matcher(text);
        while (id.find()) {
          boolean own = id.group(1).equals(letter);
          highest = own ? Math.max(highest, Integer.parseInt(id.group(2))) : highest;
        }
      }
    }
    return highest;
  }

  private String head(String head, String letter) {
    String entry = "  " + topic + ": {letter: " + letter + ", title: \"" + spoken() + "\"}\n";
    if (head.isEmpty()) {
      return "# Rules of our own, added to those that come with the program.\n"
          + "extends: shipped\n"
          + "name: Own rules\n"
          + "version: 0.1.0\n"
          + "topics:\n"
          + entry;
    }
    boolean there = Pattern.compile("(?m)^  " + Pattern.quote(topic) + ":").matcher(head).find();
    return there ? head : head.replaceFirst("(?m)^topics:\\s*?\\n", "topics:\n" + entry);
  }

  private String spoken() {
    String words = topic.replace('-', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private String rule(String id, String shown, String limit) {
    return """
        // Say here why: what goes wrong on a foot that is left longer than this.
        // Silent when nobody noted how long ago the foot was last done.
        rule "%s"
            @id(%s) @topic(%s) @basis(practice) @since(0.1.0)
        when
            $most : Limit( id == "%s" )
            $days : Reading( what == "shodDaysAgo", misses( $most ) )
        then
            insert( Caution.about( "%s", $days, $most ) );
        end
        """
        .formatted(shown, id, topic, limit, caution(id));
  }

  private String caution(String id) {
    return topic + "-" + id.toLowerCase(Locale.ROOT);
  }

  private static String saying(String id) {
    return """
        %s:
          says: "Last done {days} ago; we let no foot go longer than {most}."
          sources: [practice]
        """
        .formatted(id);
  }

  private static String limit(String id) {
    return """
        - id: %s
          label: longest a foot is left
          value: 56
          unit: days
          direction: at-most
          inclusive: true
          source: practice
          locator: "agreed among ourselves"
          basis: practice
          safer: down
          step: 1
        """
        .formatted(id);
  }

  private String example(String id, String shown, String limit) {
    return """
        rule: %s
        title: "%s"
        foot: left-fore
        # What the rule concludes.
        expects: {caution: %s}
        # A foot that fires the rule.
        assessment:
          format: hornbook-assessment/1
          visit: {shodDaysAgo: 60}
          feet:
            - limb: left-fore
        # The one change that silences it: the near-miss.
        nearMiss: "visit.shodDaysAgo=56"
        # One step under the limit, on it, and one step over.
        limits:
          %s: {field: "visit.shodDaysAgo", under: "55", at: "56", over: "57"}
        """
        .formatted(id, shown.replace("\\", "\\\\").replace("\"", "\\\""), caution(id), limit);
  }
}
