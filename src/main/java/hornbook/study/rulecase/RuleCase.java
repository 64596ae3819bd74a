package hornbook.study.rulecase;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.CaseFile;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The case of a rule: a foot that fires it, what it concludes, the one change that silences it, and
 * for each limit it binds a field with values that bring the reading under, at and over the limit.
 * A further case of the rule may be a foot on which it is to stay silent, and the one change that
 * fires it.
 *
 * @param expects what the rule is to conclude; null where the case does not say
 * @param silent further single changes that each silence the rule, so that every one of its
 *     conditions is once the only one that fails
 * @param limits the brackets by limit; more than one where the limit differs by limb or age
 */
public record RuleCase(
    String rule,
    String title,
    int foot,
    ExpectedConclusion expects,
    Assessment assessment,
    String nearMiss,
    List<String> silent,
    Map<String, List<Bracket>> limits,
    Path file) {

  private static final List<String> KEYS =
      List.of("rule", "title", "foot", "expects", "assessment", "nearMiss", "silent", "limits");
  private static final List<String> BRACKET_KEYS = List.of("with", "field", "under", "at", "over");

  /**
   * A field and the values that bring a reading one step under a limit, on it, and one step over.
   *
   * @param with changes made first, to reach the foot the limit holds for
   */
  public record Bracket(List<String> with, String field, String under, String at, String over) {
    public List<String> values() {
      return List.of(under, at, over);
    }

    /** All that is changed to bring the field to one of the values. */
    public String[] changes(String value) {
      List<String> changes = new ArrayList<>(with);
      changes.add(field + "=" + value);
      return changes.toArray(String[]::new);
    }
  }

  /** A case that cannot be read, and why, in plain words. */
  public static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(Path file, String says) {
      super(file.getFileName() + ": " + says);
    }
  }

  /** Whether this is the case every rule has, in the file named after it; it may have others. */
  boolean first() {
    return file.getFileName().toString().equals(rule + ".yaml");
  }

  public static RuleCase read(Path file) throws IOException, Unusable {
    ReadResult.Good good = parsed(file, List.of());
    CaseFile round =
        good.caseFile().orElseThrow(() -> new Unusable(file, "no assessment key: not a case file"));
    known(file, round.whole(), KEYS);
    String limb = text(file, round.whole(), "foot");
    int foot = -1;
    for (int at = 0; at < good.assessment().feet().size(); at++) {
      Limb own = good.assessment().feet().get(at).limb();
      foot = own.word().equals(limb) ? at : foot;
    }
    if (foot < 0) {
      throw new Unusable(file, "the foot " + limb + " is not in the assessment");
    }
    return new RuleCase(
        text(file, round.whole(), "rule"),
        text(file, round.whole(), "title"),
        foot,
        expects(file, round.whole().get("expects")),
        good.assessment(),
        text(file, round.whole(), "nearMiss"),
        texts(file, round.whole(), "silent"),
        limits(file, round.whole()),
        file);
  }

  /** The assessment with fields changed, each written as {@code path=value}. */
  public Assessment with(String... changes) throws IOException, Unusable {
    List<Setting> set = List.of(changes).stream().map(Setting::parse).toList();
    return parsed(file, set).assessment();
  }

  private static ReadResult.Good parsed(Path file, List<Setting> set) throws IOException, Unusable {
    ReadResult result =
        AssessmentReader.read(Files.readAllBytes(file), String.valueOf(file.getFileName()), set);
    if (result instanceof ReadResult.Faulty faulty) {
      throw new Unusable(
          file, faulty.faults().stream().map(Fault::message).collect(Collectors.joining("; ")));
    }
    return (ReadResult.Good) result;
  }

  private static ExpectedConclusion expects(Path file, LocatedValue value) throws Unusable {
    if (value == null) {
      return null;
    }
    if (value instanceof LocatedValue.Scalar word && word.text().equals("silent")) {
      return ExpectedConclusion.SILENT;
    }
    if (!(value instanceof LocatedValue.Group group)
        || !ExpectedConclusion.SHAPES.contains(group.members().keySet())) {
      throw new Unusable(
          file,
          "expects holds bearing and subjects, or urgency and danger, or finding, or caution,"
              + " or is the word silent");
    }
    Map<String, Set<String>> words = new LinkedHashMap<>();
    for (String key : group.members().keySet()) {
      boolean many = key.equals("subjects");
      words.put(key, many ? Set.copyOf(texts(file, group, key)) : Set.of(text(file, group, key)));
    }
    return new ExpectedConclusion(words);
  }

  private static Map<String, List<Bracket>> limits(Path file, LocatedValue.Group whole)
      throws Unusable {
    Map<String, List<Bracket>> limits = new LinkedHashMap<>();
    if (whole.get("limits") instanceof LocatedValue.Group all) {
      for (String id : all.members().keySet()) {
        LocatedValue value = all.get(id);
        List<Bracket> brackets = new ArrayList<>();
        for (LocatedValue one :
            value instanceof LocatedValue.Items list ? list.items() : List.of(value)) {
          brackets.add(bracket(file, id, one));
        }
        limits.put(id, List.copyOf(brackets));
      }
    }
    return limits;
  }

  private static Bracket bracket(Path file, String id, LocatedValue value) throws Unusable {
    if (!(value instanceof LocatedValue.Group one)) {
      throw new Unusable(file, "the limit " + id + " has to hold field, under, at and over");
    }
    known(file, one, BRACKET_KEYS);
    return new Bracket(
        texts(file, one, "with"),
        text(file, one, "field"),
        text(file, one, "under"),
        text(file, one, "at"),
        text(file, one, "over"));
  }

  private static void known(Path file, LocatedValue.Group group, List<String> keys)
      throws Unusable {
    for (String key : group.members().keySet()) {
      if (!keys.contains(key)) {
        throw new Unusable(
            file, "the key " + key + " is not known; known are " + String.join(", ", keys));
      }
    }
  }

  /** The texts of a list that may be left out. */
  private static List<String> texts(Path file, LocatedValue.Group group, String key)
      throws Unusable {
    List<String> texts = new ArrayList<>();
    LocatedValue value = group.get(key);
    if (value == null) {
      return List.of();
    }
    if (!(value instanceof LocatedValue.Items list)) {
      throw new Unusable(file, key + " has to be a list");
    }
    for (LocatedValue one : list.items()) {
      if (!(one instanceof LocatedValue.Scalar scalar)) {
        throw new Unusable(file, "an entry of " + key + " has to be plain text");
      }
      texts.add(scalar.text());
    }
    return List.copyOf(texts);
  }

  private static String text(Path file, LocatedValue.Group group, String key) throws Unusable {
    if (group.get(key) instanceof LocatedValue.Scalar scalar) {
      return scalar.text();
    }
    throw new Unusable(file, key + " is missing");
  }
}
