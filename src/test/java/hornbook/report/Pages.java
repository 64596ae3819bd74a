package hornbook.report;

import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.RuleCase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Advice to write reports of: every case of a rule, every exercise, and files of our own. */
public final class Pages {
  private static final List<String> OWN =
      List.of("torn-toe", "two-feet", "everything-wrong", "nothing-known");
  private static final Map<String, Advice> RULE_CASES = new LinkedHashMap<>();
  private static final Map<String, Advice> WHOLE = new LinkedHashMap<>();

  static {
    try {
      for (RuleCase one : Shipped.ruleCases().values()) {
        RULE_CASES.putIfAbsent(one.rule(), Shipped.ADVISOR.advise(one.assessment()));
      }
      for (Path file : Shipped.files(Shipped.EXERCISES)) {
        WHOLE.put(file.toString(), read(Files.readString(file)));
      }
      for (String name : OWN) {
        WHOLE.put(name, advice(name));
      }
    } catch (Exception broken) {
      throw new ExceptionInInitializerError(broken);
    }
  }

  private Pages() {}

  /** By rule, the advice on the case of every rule. */
  public static Map<String, Advice> ruleCases() {
    return RULE_CASES;
  }

  /** By name, the advice on every exercise and every file of our own. */
  public static Map<String, Advice> whole() {
    return WHOLE;
  }

  public static Map<String, Advice> all() {
    Map<String, Advice> all = new LinkedHashMap<>(RULE_CASES);
    all.putAll(WHOLE);
    return all;
  }

  /** The advice on a file among the resources of these tests. */
  public static Advice advice(String name) throws Exception {
    return read(Files.readString(Path.of("src/test/resources/hornbook/report", name + ".yaml")));
  }

  public static Advice read(String yaml) {
    ReadResult read = AssessmentReader.read(yaml.getBytes(), "a file", List.of());
    if (read instanceof ReadResult.Good good) {
      return Shipped.ADVISOR.advise(good.assessment());
    }
    throw new IllegalArgumentException(read.toString());
  }

  public static Stream<TextOptions> options() {
    return Stream.of(Units.values())
        .flatMap(
            units ->
                Stream.of(Detail.values())
                    .map(detail -> new TextOptions(units, detail, false, TextOptions.USUAL_WIDTH)));
  }
}
