package hornbook.report.record;

import hornbook.assessment.Assessment;
import hornbook.assessment.WallStretch;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.word.Word;
import hornbook.record.AssessmentTree;
import hornbook.record.Entry;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import hornbook.report.words.PlainWords;
import hornbook.report.words.RecordedText;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What was noted at a visit, as rows of a name and a value. */
final class AssessmentRows {
  private static final List<String> VET_LOOKS_FOR =
      List.of("soleDepth", "palmarAngle", "lameness", "onset", "lameSinceShod", "landing");

  private final Assessment assessment;
  private final Amounts amounts;
  private final RecordedText text;

  private AssessmentRows(Assessment assessment, Amounts amounts) {
    this.assessment = assessment;
    this.amounts = amounts;
    this.text = new RecordedText(amounts);
  }

  /** Null where the assessment of the entry can no longer be read. */
  static AssessmentRows of(Entry entry, Amounts amounts) {
    byte[] bytes = AssessmentTree.bytes(entry.assessment());
    ReadResult read = AssessmentReader.read(bytes, "entry", List.of());
    return read instanceof ReadResult.Good good
        ? new AssessmentRows(good.assessment(), amounts)
        : null;
  }

  Assessment assessment() {
    return assessment;
  }

  /** What was noted of horse and visit. */
  List<List<String>> horse() {
    return rows(
        field -> field.path().startsWith("horse.") || field.path().startsWith("visit."),
        List.of("Horse and visit", "Noted"));
  }

  /** What was measured on a foot, by hand or from images, and the map of its wall. */
  List<List<String>> measured(int foot) {
    String at = "feet[" + foot + "].measures.";
    List<List<String>> rows =
        rows(field -> field.path().startsWith(at), List.of("Measure", "Noted"));
    List<WallStretch> wall = assessment.feet().get(foot).wall();
    if (wall != null) {
      wall.forEach(stretch -> rows.add(new StretchRow(stretch, amounts).cells()));
    }
    return rows;
  }

  /** What was seen and felt on a foot. */
  List<List<String>> seen(int foot) {
    String at = "feet[" + foot + "].";
    return rows(
        field ->
            field.path().startsWith(at)
                && !field.path().endsWith(".limb")
                && !field.path().startsWith(at + "measures.")
                && !field.path().startsWith(at + "wall"),
        List.of("Sign", "Seen"));
  }

  /** Names of the signs, grades and images of a foot that nobody looked at. */
  List<String> notSeen(int foot) {
    String at = "feet[" + foot + "].";
    return Fields.values(assessment)
        .filter(field -> field.value() == null && field.path().startsWith(at))
        .filter(
            field ->
                field.path().startsWith(at + "signs.")
                    || VET_LOOKS_FOR.contains(field.field().name()))
        .map(field -> FieldNames.of(field.path()))
        .toList();
  }

  private List<List<String>> rows(Predicate<FieldValue> which, List<String> headings) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(headings);
    Fields.values(assessment)
        .filter(field -> field.value() != null && which.test(field))
        .filter(field -> !(field.field().kind() instanceof FieldRows) || none(field))
        .filter(field -> !field.field().name().equals("name"))
        .forEach(
            field ->
                rows.add(List.of(Sentence.capital(FieldNames.of(field.path())), value(field))));
    return rows;
  }

  /** A list that was looked for and found empty says so; any other is told row by row. */
  private static boolean none(FieldValue field) {
    return field.value() instanceof List<?> list && list.isEmpty();
  }

  private String value(FieldValue field) {
    if (field.value() instanceof Word word) {
      return PlainWords.of(word.word());
    }
    if (field.value() instanceof List<?> list && !list.isEmpty()) {
      return list.stream()
          .map(one -> one instanceof Word word ? PlainWords.of(word.word()) : one.toString())
          .collect(Collectors.joining(", "));
    }
    return text.value(field);
  }
}
