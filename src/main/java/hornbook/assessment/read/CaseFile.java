package hornbook.assessment.read;

import hornbook.assessment.tree.FileTree;
import hornbook.assessment.tree.LocatedValue;
import java.util.List;

/**
 * What stands round the assessment in a case file. What is null was not given.
 *
 * @param whole the whole file, for the keys of a rule's case
 */
public record CaseFile(
    String title,
    String story,
    LocatedValue expected,
    LocatedValue teaching,
    LocatedValue.Group whole) {
  /** Every key a case file may have. */
  public static final List<String> KEYS =
      List.of(
          "title",
          "story",
          "level",
          "topics",
          "pair",
          FileTree.ASSESSMENT,
          "expected",
          "differs",
          "teaching",
          "rule",
          "foot",
          "expects",
          "nearMiss",
          "silent",
          "limits");

  static CaseFile of(LocatedValue.Group whole) {
    return new CaseFile(
        text(whole, "title"),
        text(whole, "story"),
        whole.get("expected"),
        whole.get("teaching"),
        whole);
  }

  private static String text(LocatedValue.Group whole, String key) {
    return whole.get(key) instanceof LocatedValue.Scalar scalar && !scalar.unknown()
        ? scalar.text().strip()
        : null;
  }
}
