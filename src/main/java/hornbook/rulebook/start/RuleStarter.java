package hornbook.rulebook.start;

import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.load.ShippedRules;
import hornbook.rulebook.own.Extension;
import hornbook.rulebook.read.RulebookReader;
import hornbook.rulebook.read.VersionNotes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files of a new rule: rule, text, limit, and the case with the foot that fires it and the one
 * change that silences it. They hold together from the start; the author then changes one thing at
 * a time. The rule is added to the shipped ones, or to a whole rule base where the folder holds
 * one.
 */
public final class RuleStarter {
  private static final Pattern ID = Pattern.compile("@id\\((\\w)(\\d{3})\\)");

  /** What a topic, or a group of rules in it, may be called. */
  public static final Pattern TOPIC = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private final Path folder;
  private final String topic;
  private final String title;
  private final String group;
  private final StarterReading reading;

  /**
   * For a rule of a topic in a folder, which may not be there yet.
   *
   * @param title in words of the trade, or null for one to be replaced
   * @param group the file of the topic the rule goes into, or null for one of its own
   * @param measure one of {@link #measures} the rule is about, or null for the days since shoeing
   */
  public RuleStarter(Path folder, String topic, String title, String group, String measure) {
    this.folder = folder;
    this.topic = topic;
    this.title = title;
    this.group = group;
    this.reading = measure == null ? StarterReading.LAST_VISIT : StarterReading.of(measure);
  }

  /** The measures of a foot that a rule may be begun on. */
  public static List<String> measures() {
    return StarterReading.measures();
  }

  /** Whether a folder holds a whole rule base and not rules that are added to the shipped ones. */
  public static boolean whole(Path folder) throws IOException {
    return Files.isRegularFile(folder.resolve(RuleFiles.HEAD))
        && !RulebookReader.extendsShipped(folder);
  }

  /**
   * The files to write, by their name in the folder; those that are there already are added to.
   *
   * @param today the day a version that is begun is dated
   */
  public Map<String, String> files(LocalDate today) throws IOException {
    boolean whole = whole(folder);
    String head = text(RuleFiles.HEAD);
    String letter = letter(head);
    String id = letter + String.format(Locale.ROOT, "%03d", highest(letter) + 1);
    NextVersion version = new NextVersion(head, text(VersionNotes.FILE));
    StarterText rule =
        new StarterText(id, topic, title, whole ? version.number() : "0.1.0", reading);
    Map<String, String> files = new LinkedHashMap<>();
    if (whole) {
      files.putAll(new TreeMap<>(version.files(rule, today)));
    }
    files.put(RuleFiles.HEAD, head(files.getOrDefault(RuleFiles.HEAD, head), letter));
    String file = topic + "/" + (group == null ? id.toLowerCase(Locale.ROOT) : group);
    add(files, file + ".drl", rule.rule());
    add(files, file + ".yaml", rule.says());
    add(files, topic + "/limits.yaml", rule.limit());
    boolean beside = whole && !Files.isDirectory(folder.resolve("cases"));
    files.put((beside ? "../" : "") + "cases/rules/" + id + ".yaml", rule.example());
    return files;
  }

  private void add(Map<String, String> files, String name, String text) throws IOException {
    String there = text(name);
    files.put(name, there + (there.isEmpty() ? "" : "\n") + text);
  }

  private String text(String name) throws IOException {
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

  private int highest(String letter) throws IOException {
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
}
