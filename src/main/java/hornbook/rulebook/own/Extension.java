package hornbook.rulebook.own;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.Version;
import hornbook.rulebook.file.YamlMap;
import hornbook.rulebook.load.ShippedRules;
import java.util.ArrayList;
import java.util.List;

/** The head of rules that are added to the shipped ones: their name, version and topics. */
public final class Extension {
  private static final String SHIPPED = "shipped";

  private final Rulebook base;
  private final String name;
  private final String version;

  private Extension(Rulebook base, String name, String version) {
    this.base = base;
    this.name = name;
    this.version = version;
  }

  /** The extension a head announces; null where it is the head of a whole rule base. */
  public static Extension of(YamlMap head) {
    if (!head.has("extends")) {
      head.only("version", "topics", "techniques", "supports");
      return null;
    }
    head.only("extends", "name", "version", "topics");
    if (!head.text("extends").equals(SHIPPED)) {
      head.fault(
          head.line("extends"), "only the shipped rules can be extended", "extends: shipped");
    }
    String version = head.text("version");
    if (!Version.known(version)) {
      head.fault(head.line("version"), "\"" + version + "\" is no version", "write it like 0.1.0");
    }
    return new Extension(ShippedRules.book(), head.text("name"), version);
  }

  public Rulebook base() {
    return base;
  }

  /** The later of the two versions: no rule of either can be newer. */
  public String latest() {
    return Version.later(version, base.version()) ? version : base.version();
  }

  /** {@code 1.0.0 with Upper Yard 0.1.0}. */
  public String shown() {
    return base.version() + " with " + name + " " + version;
  }

  /** The shipped topics, and after them the added. */
  public List<Topic> topics(List<Topic> own, YamlMap head) {
    List<Topic> all = new ArrayList<>(base.topics());
    for (Topic topic : own) {
      for (Topic shipped : base.topics()) {
        if (shipped.id().equals(topic.id())) {
          refuse(head, topic, "is a topic of the shipped rules", "give yours another name");
        } else if (shipped.letter().equals(topic.letter())) {
          refuse(
              head,
              topic,
              "has the letter of the shipped topic " + shipped.id(),
              "take one of " + free());
        }
      }
      all.add(topic);
    }
    return List.copyOf(all);
  }

  private static void refuse(YamlMap head, Topic topic, String says, String cure) {
    head.fault(head.map("topics").line(topic.id()), topic.id() + " " + says, cure);
  }

  private String free() {
    return String.join(" ", freeLetters(base));
  }

  /** The letters no topic of a rule base has. */
  public static List<String> freeLetters(Rulebook base) {
    List<String> free = new ArrayList<>();
    for (char letter = 'A'; letter <= 'Z'; letter++) {
      String one = String.valueOf(letter);
      if (base.topics().stream().noneMatch(topic -> topic.letter().equals(one))) {
        free.add(one);
      }
    }
    return free;
  }
}
