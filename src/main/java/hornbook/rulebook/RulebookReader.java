package hornbook.rulebook;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads a folder of rules: the rule files, their texts, limits, findings and sources. */
public final class RulebookReader {
  /** What was read and found in order, before it is compiled. */
  public record Draft(Rulebook book, Map<String, String> texts) {
    Rulebook compiledAs(String modelClass) {
      return new Rulebook(
          book.version(),
          book.digest(),
          modelClass,
          book.topics(),
          book.techniques(),
          book.supports(),
          book.sources(),
          book.findings(),
          book.limits(),
          book.rules(),
          book.instructions(),
          book.glossary(),
          book.practice());
    }
  }

  /** Where the limits and sentences of the job sheets lie. */
  private static final String PLAN = "plan/";

  private final Path folder;
  private final List<RuleFault> faults = new ArrayList<>();
  private final Map<String, String> files = new TreeMap<>();
  private final Map<String, RuleEntry> rules = new TreeMap<>();
  private final Map<String, RuleText> texts = new TreeMap<>();
  private final Map<String, String> textPlaces = new TreeMap<>();
  private final Map<String, Source> sources = new TreeMap<>();
  private final Map<String, FindingKind> findings = new TreeMap<>();
  private final List<Limit> limits = new ArrayList<>();
  private final Map<String, String> limitFiles = new TreeMap<>();
  private final Map<String, Instruction> instructions = new TreeMap<>();
  private final List<Term> glossary = new ArrayList<>();

  private RulebookReader(Path folder) {
    this.folder = folder;
  }

  /** Reads and checks a folder; all its faults are told at once. */
  public static Draft read(Path folder) throws IOException, RuleBaseFaulty {
    return new RulebookReader(folder).read();
  }

  private Draft read() throws IOException, RuleBaseFaulty {
    readFiles();
    YamlMap head = YamlMap.file("rulebook.yaml", files.getOrDefault("rulebook.yaml", ""), faults);
    head.only("version", "topics", "techniques", "supports");
    List<Topic> topics = new ArrayList<>();
    YamlMap topicMap = head.map("topics");
    for (String id : topicMap.keys()) {
      YamlMap topic = topicMap.map(id);
      topic.only("letter", "title");
      topics.add(new Topic(id, topic.text("letter"), topic.text("title")));
    }
    files.forEach(this::readOne);
    Map<String, String> drl = new LinkedHashMap<>();
    files.forEach(
        (name, text) -> {
          if (name.endsWith(".drl")) {
            drl.put(name, text);
          }
        });
    Map<String, RuleEntry> joined = new TreeMap<>();
    rules.forEach((id, rule) -> joined.put(id, joined(rule)));
    Rulebook book =
        new Rulebook(
            head.text("version"),
            digest(),
            "",
            List.copyOf(topics),
            named(head, "techniques"),
            named(head, "supports"),
            unmodifiable(sources),
            unmodifiable(findings),
            List.copyOf(limits),
            unmodifiable(joined),
            unmodifiable(instructions),
            List.copyOf(glossary),
            null);
    new RulebookCheck(book, textPlaces, limitFiles, faults).check();
    if (!faults.isEmpty()) {
      throw new RuleBaseFaulty(faults);
    }
    return new Draft(book, drl);
  }

  private void readFiles() throws IOException {
    if (!Files.isDirectory(folder)) {
      faults.add(new RuleFault(folder.toString(), 0, "", "there is no such folder of rules", ""));
      return;
    }
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (name.endsWith(".drl") || name.endsWith(".yaml")) {
          files.put(name, Files.readString(file).replace("\r\n", "\n"));
        } else {
          faults.add(
              new RuleFault(name, 0, "", "only .drl and .yaml files belong here", "move it away"));
        }
      }
    }
  }

  private void readOne(String name, String text) {
    if (name.endsWith(".drl")) {
      for (RuleEntry rule : new DrlReader(name, faults).read(text)) {
        RuleEntry other = rules.put(rule.id(), rule);
        if (other != null) {
          faults.add(
              new RuleFault(
                  name,
                  rule.line(),
                  rule.id(),
                  "the id stands already in " + other.file() + ":" + other.line(),
                  "give one of them a new id"));
        }
      }
    } else if (name.equals("sources.yaml")) {
      YamlMap all = YamlMap.file(name, text, faults);
      for (String key : all.keys()) {
        YamlMap one = all.map(key);
        one.only("author", "title", "year", "where");
        sources.put(
            key,
            new Source(
                key,
                one.text("author"),
                one.text("title"),
                (int) one.number("year"),
                one.text("where")));
      }
    } else if (name.equals("glossary.yaml")) {
      YamlMap all = YamlMap.file(name, text, faults);
      for (String word : all.keys()) {
        glossary.add(new Term(word, all.text(word)));
      }
    } else if (name.endsWith("/findings.yaml")) {
      YamlMap all = YamlMap.file(name, text, faults);
      for (String id : all.keys()) {
        YamlMap one = all.map(id);
        one.only("label", "defect");
        FindingKind other =
            findings.put(
                id,
                new FindingKind(id, one.text("label"), one.flag("defect", false), topicOf(name)));
        if (other != null) {
          all.fault(all.line(id), id + " is listed under " + other.topic() + " too", "keep one");
        }
      }
    } else if (name.endsWith("/limits.yaml")) {
      for (Limit limit : LimitsFile.read(name, text, faults)) {
        limits.add(limit);
        limitFiles.put(limit.id(), name);
      }
    } else if (name.startsWith(PLAN)) {
      instructions(name, text);
    } else if (!name.equals("rulebook.yaml")) {
      YamlMap all = YamlMap.file(name, text, faults);
      for (String id : all.keys()) {
        YamlMap one = all.map(id);
        one.only("says", "meanwhile", "sources", "techniques");
        texts.put(
            id,
            new RuleText(
                one.text("says").strip(),
                strip(one.optional("meanwhile")),
                List.copyOf(one.texts("sources")),
                List.copyOf(one.texts("techniques"))));
        String before = textPlaces.put(id, name + ":" + all.line(id));
        if (before != null) {
          all.fault(all.line(id), id + " has a text already in " + before, "keep one");
        }
      }
    }
  }

  /** The sentences of a section of the job sheet; the file bears the section's name. */
  private void instructions(String name, String text) {
    String section = name.substring(PLAN.length(), name.length() - ".yaml".length());
    YamlMap all = YamlMap.file(name, text, faults);
    for (String key : all.keys()) {
      YamlMap one = all.map(key);
      one.only("says", "sources", "basis");
      String id = section + "." + key;
      Basis basis = one.word("basis", Basis.class);
      if (basis == null) {
        one.fault(one.line(), "an instruction needs a basis", "");
      } else {
        List<String> from = List.copyOf(one.texts("sources"));
        instructions.put(id, new Instruction(id, one.text("says").strip(), from, basis));
      }
    }
  }

  private RuleEntry joined(RuleEntry rule) {
    RuleText text = texts.get(rule.id());
    if (text == null) {
      faults.add(
          new RuleFault(
              rule.file(),
              rule.line(),
              rule.id(),
              "the rule has no text",
              "write " + rule.id() + ": {says: …} into " + rule.file().replace(".drl", ".yaml")));
      text = new RuleText("", null, List.of(), List.of());
    }
    return new RuleEntry(
        rule.id(),
        rule.title(),
        rule.topic(),
        rule.basis(),
        rule.since(),
        rule.why(),
        rule.silent(),
        rule.conditions(),
        rule.outcome(),
        text,
        rule.file(),
        rule.line());
  }

  private static List<Named> named(YamlMap head, String key) {
    List<Named> named = new ArrayList<>();
    YamlMap all = head.map(key);
    for (String id : all.keys()) {
      YamlMap one = all.map(id);
      one.only("label");
      named.add(new Named(id, one.text("label")));
    }
    return List.copyOf(named);
  }

  private static String strip(String text) {
    return text == null ? null : text.strip();
  }

  private static String topicOf(String name) {
    return name.substring(0, name.indexOf('/'));
  }

  /** Names and contents of all files: two folders with the same digest hold the same rules. */
  private String digest() {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      files.forEach(
          (name, text) -> {
            sha.update(name.getBytes(StandardCharsets.UTF_8));
            sha.update((byte) 0);
            sha.update(text.getBytes(StandardCharsets.UTF_8));
            sha.update((byte) 0);
          });
      return "sha256:" + HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  private static <V> Map<String, V> unmodifiable(Map<String, V> map) {
    return java.util.Collections.unmodifiableMap(new TreeMap<>(map));
  }
}
