package hornbook.study.exercise;

import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.CaseFile;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Member;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a teaching case and checks everything that stands round its assessment. */
public final class ExerciseReader {
  private static final List<String> EXPECTED =
      List.of(
          "firstChoice",
          "urgency",
          "ruledOut",
          "supports",
          "findings",
          "because",
          "cautions",
          "ask");
  private static final List<String> DIFFERS =
      List.of("foot", "technique", "support", "without", "vet", "source", "says");
  private static final List<String> TEACHING = List.of("asks", "notes");
  private static final List<String> LEVELS = List.of("1", "2", "3");

  private final Vocabulary known;
  private final List<Fault> faults;
  private final Entries entries;

  private ExerciseReader(Vocabulary known, List<Fault> faults) {
    this.known = known;
    this.faults = faults;
    this.entries = new Entries(faults);
  }

  /**
   * The case in a file; null, with faults, where something is wrong with it.
   *
   * @param shown the file as people know it
   */
  public static Exercise read(byte[] bytes, String shown, Vocabulary known, List<Fault> faults) {
    ReadResult read = AssessmentReader.read(bytes, shown, List.of());
    if (read instanceof ReadResult.Faulty faulty) {
      faults.addAll(faulty.faults());
      return null;
    }
    ReadResult.Good good = (ReadResult.Good) read;
    if (good.caseFile().isEmpty()) {
      String keys = "a case: title, story, level, topics, assessment, expected, teaching";
      faults.add(new Fault(shown, 1, 1, "", "an assessment alone", keys, null));
      return null;
    }
    int before = faults.size();
    Exercise exercise =
        new ExerciseReader(known, faults).exercise(good, good.caseFile().get(), shown);
    return faults.size() == before ? exercise : null;
  }

  private Exercise exercise(ReadResult.Good good, CaseFile round, String shown) {
    Group whole = round.whole();
    String title = required(whole, "title");
    String story = required(whole, "story");
    String level = entries.word(whole, "level", LEVELS);
    List<String> topics = entries.words(whole, "topics", known.topics());
    Group teaching = group(whole, "teaching", TEACHING);
    return new Exercise(
        name(shown),
        shown,
        title,
        story,
        level == null ? 1 : Integer.parseInt(level),
        orNone(topics),
        entries.text(whole, "pair"),
        good,
        expected(whole, good),
        differs(whole, good),
        teaching == null ? List.of() : orNone(entries.texts(teaching, "asks")),
        teaching == null ? List.of() : orNone(entries.texts(teaching, "notes")));
  }

  /** The name of a file without folders and ending. */
  static String name(String file) {
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private String required(Group group, String key) {
    String text = entries.text(group, key);
    if (Entries.given(group, key) == null) {
      entries.missing(group, key, "a text");
    }
    return text == null ? "" : text;
  }

  private Group group(Group whole, String key, List<String> keys) {
    LocatedValue value = Entries.given(whole, key);
    return value == null ? null : entries.group(value, keys);
  }

  private static List<String> orNone(List<String> list) {
    return list == null ? List.of() : list;
  }

  private Map<Limb, Expected> expected(Group whole, ReadResult.Good good) {
    List<String> feet = feet(good);
    Map<Limb, Expected> expected = new LinkedHashMap<>();
    Group all = group(whole, "expected", feet);
    if (all == null) {
      entries.missing(whole, "expected", "for each foot: " + String.join(", ", EXPECTED));
      return expected;
    }
    for (Map.Entry<String, Member> entry : all.members().entrySet()) {
      Group one = entries.group(entry.getValue().value(), EXPECTED);
      if (one != null && feet.contains(entry.getKey())) {
        expected.put(limb(entry.getKey()), expected(one));
      }
    }
    return Collections.unmodifiableMap(expected);
  }

  private Expected expected(Group one) {
    for (String key : EXPECTED.subList(0, 4)) {
      if (Entries.given(one, key) == null) {
        entries.missing(one, key, key.equals("firstChoice") ? "a technique, or none" : "a word");
      }
    }
    List<String> either = new ArrayList<>(known.techniques());
    either.addAll(known.supports());
    return new Expected(
        entries.word(one, "firstChoice", known.techniquesOrNone()),
        entries.word(one, "urgency", Vocabulary.URGENCIES),
        orNone(entries.words(one, "ruledOut", either)),
        orNone(entries.words(one, "supports", known.supports())),
        entries.words(one, "findings", known.findings()),
        entries.words(one, "because", known.rules()),
        entries.words(one, "cautions", known.cautions()),
        entries.texts(one, "ask"));
  }

  private List<OtherView> differs(Group whole, ReadResult.Good good) {
    LocatedValue value = Entries.given(whole, "differs");
    List<OtherView> views = new ArrayList<>();
    for (LocatedValue item : value == null ? List.<LocatedValue>of() : Entries.items(value)) {
      Group one = entries.group(item, DIFFERS);
      if (one != null) {
        views.add(view(one, feet(good)));
      }
    }
    return List.copyOf(views);
  }

  private OtherView view(Group one, List<String> feet) {
    String foot = entries.word(one, "foot", feet);
    String technique = entries.word(one, "technique", known.techniquesOrNone());
    String support = entries.word(one, "support", known.supports());
    String without = entries.word(one, "without", known.supports());
    String vet = entries.word(one, "vet", Vocabulary.URGENCIES);
    String source = entries.word(one, "source", known.sources());
    if (technique == null && support == null && without == null && vet == null) {
      String wanted = "technique, support, without or vet: what that author would do";
      entries.missing(one, "technique", wanted);
    }
    for (String key : List.of("foot", "source")) {
      if (Entries.given(one, key) == null) {
        entries.missing(one, key, key.equals("foot") ? "a foot of the case" : "a key of a source");
      }
    }
    Limb limb = foot == null ? null : limb(foot);
    return new OtherView(limb, technique, support, without, vet, source, required(one, "says"));
  }

  private static List<String> feet(ReadResult.Good good) {
    return good.assessment().feet().stream().map(Foot::limb).map(Limb::word).toList();
  }

  static Limb limb(String word) {
    for (Limb limb : Limb.values()) {
      if (limb.word().equals(word)) {
        return limb;
      }
    }
    return null;
  }
}
