package hornbook.report;

import hornbook.advice.Advice;
import hornbook.assessment.AssessmentReader;
import hornbook.assessment.ReadResult;
import hornbook.assessment.Units;
import hornbook.rules.Shipped;
import hornbook.study.RuleCase;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Advice to write reports of: every case of a rule, every exercise, and files of our own. */
final class Pages {
  private Pages() {}

  /** By name, the advice on every rule's case and on every exercise. */
  static Map<String, Advice> all() throws Exception {
    Map<String, Advice> all = new LinkedHashMap<>();
    for (RuleCase one : Shipped.ruleCases().values()) {
      all.put(one.rule(), Shipped.ADVISOR.advise(one.assessment()));
    }
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      all.put(file.toString(), advice(Files.readAllBytes(file), file.toString()));
    }
    for (String name : List.of("torn-toe", "everything-wrong", "nothing-known", "two-feet")) {
      all.put(name, advice(name));
    }
    return all;
  }

  static Advice advice(String resource) throws Exception {
    String file = resource + ".yaml";
    try (var in = Pages.class.getResourceAsStream(file)) {
      return advice(in.readAllBytes(), file);
    }
  }

  static Advice advice(byte[] text, String name) {
    ReadResult read = AssessmentReader.read(text, name, List.of());
    if (read instanceof ReadResult.Good good) {
      return Shipped.ADVISOR.advise(good.assessment());
    }
    throw new IllegalArgumentException(name + ": " + read);
  }

  static String expected(String name) throws Exception {
    try (var in = Pages.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  static Stream<TextOptions> options() {
    return Stream.of(Units.values())
        .flatMap(
            units ->
                Stream.of(Detail.values())
                    .map(detail -> new TextOptions(units, detail, false, TextOptions.USUAL_WIDTH)));
  }
}
