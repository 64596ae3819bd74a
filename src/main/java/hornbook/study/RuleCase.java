package hornbook.study;

import hornbook.assessment.Assessment;
import hornbook.assessment.AssessmentReader;
import hornbook.assessment.CaseFile;
import hornbook.assessment.Fault;
import hornbook.assessment.Limb;
import hornbook.assessment.Located;
import hornbook.assessment.ReadResult;
import hornbook.assessment.Setting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The case of a rule: a foot that fires it, the one change that silences it, and for each limit it
 * binds a field with values that bring the reading under, at and over the limit.
 */
public record RuleCase(
    String rule,
    String title,
    int foot,
    Assessment assessment,
    String nearMiss,
    Map<String, Bracket> limits,
    Path file) {

  /**
   * A field and the values that bring a reading one step under a limit, on it, and one step over.
   */
  public record Bracket(String field, String under, String at, String over) {
    public List<String> values() {
      return List.of(under, at, over);
    }
  }

  /** A case that cannot be read, and why, in plain words. */
  public static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(Path file, String says) {
      super(file.getFileName() + ": " + says);
    }
  }

  public static RuleCase read(Path file) throws IOException, Unusable {
    ReadResult.Good good = parsed(file, List.of());
    CaseFile round =
        good.caseFile().orElseThrow(() -> new Unusable(file, "no assessment key: not a case file"));
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
        good.assessment(),
        text(file, round.whole(), "nearMiss"),
        limits(file, round.whole()),
        file);
  }

  /** The assessment with fields changed, each written as {@code path=value}. */
  public Assessment with(String... changes) throws IOException, Unusable {
    List<Setting> set = List.of(changes).stream().map(Setting::parse).toList();
    return parsed(file, set).assessment();
  }

  private static ReadResult.Good parsed(Path file, List<Setting> set) throws IOException, Unusable {
    ReadResult result = AssessmentReader.read(Files.readAllBytes(file), file.toString(), set);
    if (result instanceof ReadResult.Faulty faulty) {
      throw new Unusable(
          file, faulty.faults().stream().map(Fault::toString).collect(Collectors.joining("; ")));
    }
    return (ReadResult.Good) result;
  }

  private static Map<String, Bracket> limits(Path file, Located.Group whole) throws Unusable {
    Map<String, Bracket> limits = new LinkedHashMap<>();
    if (whole.get("limits") instanceof Located.Group all) {
      for (String id : all.members().keySet()) {
        if (!(all.get(id) instanceof Located.Group one)) {
          throw new Unusable(file, "the limit " + id + " has to hold field, under, at and over");
        }
        limits.put(
            id,
            new Bracket(
                text(file, one, "field"),
                text(file, one, "under"),
                text(file, one, "at"),
                text(file, one, "over")));
      }
    }
    return limits;
  }

  private static String text(Path file, Located.Group group, String key) throws Unusable {
    if (group.get(key) instanceof Located.Scalar scalar) {
      return scalar.text();
    }
    throw new Unusable(file, key + " is missing");
  }
}
