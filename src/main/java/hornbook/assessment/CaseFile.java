package hornbook.assessment;

import java.util.List;

/**
 * What stands round the assessment in a case file. What is null was not given.
 *
 * @param whole the whole file, for the keys of a rule's case
 */
public record CaseFile(
    String title, String story, Located expected, Located teaching, Located.Group whole) {
  /** The key of the assessment in a case file. */
  static final String ASSESSMENT = "assessment";

  /** Every key a case file may have. */
  public static final List<String> KEYS =
      List.of(
          "title",
          "story",
          "level",
          "topics",
          "pair",
          ASSESSMENT,
          "expected",
          "differs",
          "teaching",
          "rule",
          "foot",
          "expects",
          "nearMiss",
          "silent",
          "limits");

  static CaseFile of(Located.Group whole) {
    return new CaseFile(
        text(whole, "title"),
        text(whole, "story"),
        whole.get("expected"),
        whole.get("teaching"),
        whole);
  }

  private static String text(Located.Group whole, String key) {
    return whole.get(key) instanceof Located.Scalar scalar && !scalar.unknown()
        ? scalar.text().strip()
        : null;
  }
}
