package hornbook.rulebook.read;

import hornbook.rulebook.FindingKind;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.RuleText;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Shown;
import hornbook.rulebook.Source;
import hornbook.rulebook.Topic;
import hornbook.rulebook.check.RulebookCheck;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.FaultCollector;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.file.YamlMap;
import hornbook.rulebook.own.Extension;
import hornbook.rulebook.reserve.Cut;
import hornbook.rulebook.reserve.Move;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads a folder of rules: the rule files, their texts, limits, findings and sources. */
public final class RulebookReader {
  /**
   * What was read.
   *
   * @param faults everything found wrong; none where the rule base can be used
   */
  public record Draft(Rulebook book, List<RuleFault> faults) {}

  /** Where the limits and sentences of the job sheets lie. */
  private static final String PLAN = "plan/";

  private final Path folder;
  private final FaultCollector faults = new FaultCollector();
  private RuleFiles files;
  private ReservesReader reserves;
  private Extension extension;
  private String version;
  private final Map<String, RuleEntry> rules = new TreeMap<>();
  private final Map<String, RuleText> texts = new TreeMap<>();
  private final Map<String, String> textPlaces = new TreeMap<>();
  private final Map<String, Source> sources = new TreeMap<>();
  private final Map<String, FindingKind> findings = new TreeMap<>();
  private final List<Limit> limits = new ArrayList<>();
  private final Map<String, Instruction> instructions = new TreeMap<>();
  private final List<GlossaryTerm> glossary = new ArrayList<>();
  private final OtherWords otherWords = new OtherWords();

  private RulebookReader(Path folder) {
    this.folder = folder;
  }

  /** Reads and checks a folder; all its faults are told at once. */
  public static Draft read(Path folder) throws IOException, RuleBaseFaulty {
    Draft draft = inspect(folder);
    if (!draft.faults().isEmpty()) {
      throw new RuleBaseFaulty(draft.faults());
    }
    return draft;
  }

  /** The same for whoever wants the faults and not an end: what is faulty may be left out. */
  public static Draft inspect(Path folder) throws IOException {
    return new RulebookReader(folder).read();
  }

  /** Whether the rules of a folder are added to the shipped ones, as its head says. */
  public static boolean extendsShipped(Path folder) throws IOException {
    Path head = folder.resolve(RuleFiles.HEAD);
    String text = Files.isRegularFile(head) ? Files.readString(head) : "{}";
    return YamlMap.file(RuleFiles.HEAD, text, new ArrayList<>()).has("extends");
  }

  private Draft read() throws IOException {
    files = RuleFiles.read(folder, faults.all());
    YamlMap head =
        YamlMap.file(
            RuleFiles.HEAD, files.texts().getOrDefault(RuleFiles.HEAD, "{}"), faults.all());
    extension = Extension.of(head);
    if (extension != null) {
      begin(extension.base());
    }
    List<Topic> topics = new ArrayList<>();
    YamlMap topicMap = head.map("topics");
    for (String id : topicMap.keys()) {
      YamlMap topic = topicMap.map(id);
      topic.only("letter", "title");
      topics.add(new Topic(id, topic.text("letter"), topic.text("title")));
    }
    version = head.text("version");
    boolean whole = extension == null;
    List<NamedOption> techniques =
        whole ? named(head, "techniques") : extension.base().techniques();
    List<NamedOption> supports = whole ? named(head, "supports") : extension.base().supports();
    reserves = new ReservesReader(techniques, supports);
    files.texts().forEach(this::readOne);
    Map<String, RuleEntry> joined = new TreeMap<>();
    rules.forEach((id, rule) -> joined.put(id, rule.text() == null ? joined(rule) : rule));
    Rulebook book =
        new Rulebook(
            whole ? version : extension.latest(),
            whole ? files.digest() : files.digestUpon(extension.base().digest()),
            whole ? List.copyOf(topics) : extension.topics(topics, head),
            techniques,
            supports,
            unmodifiable(sources),
            unmodifiable(findings),
            List.copyOf(limits),
            unmodifiable(joined),
            unmodifiable(instructions),
            otherWords.joined(glossary, faults),
            null);
    if (faults.whole() && !faults.unreadable()) {
      textsWithoutRule();
    }
    if (!faults.unreadable()) {
      RulebookCheck.check(book, faults);
    }
    if (!whole && files.texts().keySet().stream().noneMatch(name -> name.endsWith(".drl"))) {
      faults.all().add(new RuleFault(RuleFiles.HEAD, 0, "", "no rule is added", "write one"));
    }
    if (files.texts().containsKey(VersionNotes.FILE)) {
      VersionNotes.check(files.text(VersionNotes.FILE), version, own(), faults.all());
    }
    List<RuleFault> found = faults.all().stream().sorted().distinct().toList();
    return new Draft(whole ? book : book.named(extension.shown()), found);
  }

  /** Starts from a rule base that is added to. */
  private void begin(Rulebook base) {
    rules.putAll(base.rules());
    sources.putAll(base.sources());
    findings.putAll(base.findings());
    limits.addAll(base.limits());
    instructions.putAll(base.instructions());
    glossary.addAll(base.glossary());
  }

  /** The rules of the folder itself. */
  private List<RuleEntry> own() {
    return rules.values().stream().filter(rule -> files.texts().containsKey(rule.file())).toList();
  }

  /** Whether a limit of the rule base that is added to has this id. */
  private boolean shipped(String id) {
    return extension != null
        && extension.base().limits().stream().anyMatch(limit -> limit.id().equals(id));
  }

  private void textsWithoutRule() {
    textPlaces.forEach(
        (id, place) -> {
          if (!rules.containsKey(id)) {
            int colon = place.lastIndexOf(':');
            faults
                .all()
                .add(
                    new RuleFault(
                        place.substring(0, colon),
                        Integer.parseInt(place.substring(colon + 1)),
                        id,
                        "there is a text but no such rule",
                        "write the rule, or take the text out"));
          }
        });
  }

  private void readOne(String name, String text) {
    if (name.endsWith(".drl")) {
      for (RuleEntry rule : new DrlReader(name, faults).read(text)) {
        RuleEntry other = rules.putIfAbsent(rule.id(), rule);
        if (other != null) {
          faults.drop();
          faults
              .all()
              .add(
                  new RuleFault(
                      name,
                      rule.line(),
                      rule.id(),
                      "the id stands already in " + other.file() + ":" + other.line(),
                      "give one of them a new id"));
        }
      }
    } else if (name.equals("sources.yaml")) {
      YamlMap all = YamlMap.file(name, text, faults.all());
      for (String key : all.keys()) {
        YamlMap one = all.map(key);
        one.only("author", "title", "year", "where");
        Source source =
            new Source(
                key,
                one.text("author"),
                one.text("title"),
                (int) one.number("year"),
                one.text("where"));
        if (sources.put(key, source) != null) {
          all.fault(all.line(key), "there is a source " + key + " already", "give it another key");
        }
        faults.place(source, name, all.line(key));
      }
    } else if (name.equals("glossary.yaml")) {
      YamlMap all = YamlMap.file(name, text, faults.all());
      for (String word : all.keys()) {
        GlossaryTerm term = new GlossaryTerm(word, all.text(word), List.of());
        glossary.add(term);
        faults.place(term, name, all.line(word));
      }
    } else if (name.equals(OtherWords.FILE)) {
      otherWords.read(YamlMap.file(name, text, faults.all()));
    } else if (name.endsWith("/findings.yaml")) {
      YamlMap all = YamlMap.file(name, text, faults.all());
      for (String id : all.keys()) {
        YamlMap one = all.map(id);
        one.only("label", "defect", "excludes");
        FindingKind finding =
            new FindingKind(
                id,
                one.text("label"),
                one.flag("defect", false),
                List.copyOf(one.texts("excludes")),
                topicOf(name));
        faults.place(finding, name, all.line(id));
        FindingKind other = findings.put(id, finding);
        if (other != null) {
          all.fault(all.line(id), id + " is listed under " + other.topic() + " too", "keep one");
        }
      }
    } else if (name.endsWith("/limits.yaml")) {
      for (Limit limit : LimitsFile.read(name, text, faults)) {
        if (shipped(limit.id())) {
          faults.at(
              limit,
              limit.id(),
              "it is a limit of the shipped rules",
              "give yours another id; a local practice is what moves a shipped one");
        }
        limits.add(limit);
      }
    } else if (name.startsWith(PLAN)) {
      instructions(name, text);
    } else if (!name.equals(RuleFiles.HEAD) && !name.equals(VersionNotes.FILE)) {
      YamlMap all = YamlMap.file(name, text, faults.all());
      for (String id : all.keys()) {
        YamlMap one = all.map(id);
        one.only(
            "says",
            "meanwhile",
            "reserves",
            "sources",
            "techniques",
            "dissents",
            "does",
            "against",
            "shown");
        texts.putIfAbsent(
            id,
            new RuleText(
                one.text("says").strip(),
                strip(one.optional("meanwhile")),
                List.copyOf(one.texts("sources")),
                List.copyOf(one.texts("techniques")),
                List.copyOf(one.texts("dissents")),
                reserves.read(one),
                List.copyOf(one.texts("does")),
                List.copyOf(one.texts("against")),
                shown(one)));
        String before = textPlaces.put(id, name + ":" + all.line(id));
        if (before != null) {
          all.fault(all.line(id), id + " has a text already in " + before, "keep one");
        }
      }
    }
  }

  private static Shown shown(YamlMap text) {
    Shown shown = text.has("shown") ? text.word("shown", Shown.class) : Shown.ALWAYS;
    return shown == null ? Shown.ALWAYS : shown;
  }

  /** The sentences of a section of the job sheet; the file bears the section's name. */
  private void instructions(String name, String text) {
    String section = name.substring(PLAN.length(), name.length() - ".yaml".length());
    YamlMap all = YamlMap.file(name, text, faults.all());
    for (String key : all.keys()) {
      YamlMap one = all.map(key);
      one.only("says", "sources", "basis", "cuts", "moves");
      String id = section + "." + key;
      Basis basis = one.word("basis", Basis.class);
      if (basis == null) {
        one.fault(one.line(), "an instruction needs a basis", "write basis: practice, or better");
      } else {
        List<String> from = List.copyOf(one.texts("sources"));
        Instruction instruction =
            new Instruction(
                id,
                one.text("says").strip(),
                from,
                basis,
                ReservesReader.constants(one, "cuts", Cut.class),
                ReservesReader.constants(one, "moves", Move.class));
        instructions.put(id, instruction);
        faults.place(instruction, name, all.line(key));
      }
    }
  }

  private RuleEntry joined(RuleEntry rule) {
    RuleText text = texts.get(rule.id());
    if (text == null && !faults.unreadable()) {
      faults
          .all()
          .add(
              new RuleFault(
                  rule.file(),
                  rule.line(),
                  rule.id(),
                  "the rule has no text",
                  "write "
                      + rule.id()
                      + ": {says: …} into "
                      + rule.file().replace(".drl", ".yaml")));
    }
    if (text == null) {
      text = RuleText.NONE;
    }
    text = text.holdingBack(reserves.effective(rule.outcome(), text.reserves()));
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

  private static List<NamedOption> named(YamlMap head, String key) {
    List<NamedOption> named = new ArrayList<>();
    YamlMap all = head.map(key);
    for (String id : all.keys()) {
      YamlMap one = all.map(id);
      one.only("label", "firstAid", "shoe");
      named.add(
          new NamedOption(
              id, one.text("label"), one.flag("firstAid", false), one.flag("shoe", false)));
    }
    return List.copyOf(named);
  }

  private static String strip(String text) {
    return text == null ? null : text.strip();
  }

  private static String topicOf(String name) {
    return name.substring(0, name.indexOf('/'));
  }

  private static <V> Map<String, V> unmodifiable(Map<String, V> map) {
    return java.util.Collections.unmodifiableMap(new TreeMap<>(map));
  }
}
