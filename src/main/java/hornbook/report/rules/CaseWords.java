package hornbook.report.rules;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Numbers;
import hornbook.report.words.PlainWords;
import hornbook.report.words.RecordedText;
import hornbook.study.rulecase.FiredCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says in words what a case was told, and what its near-miss changes. */
public final class CaseWords {
  private final RecordedText noted;

  public CaseWords(Amounts amounts) {
    this.noted = new RecordedText(amounts);
  }

  /** All that is known in an assessment: of the horse and the visit, then foot by foot. */
  public String given(Assessment assessment) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (FieldValue field : Fields.values(assessment).toList()) {
      if (field.value() != null && !rows(field)) {
        String row = field.path().substring(0, Math.max(0, field.path().lastIndexOf('.')));
        boolean inRow = row.endsWith("]") && !row.matches("feet\\[\\d+]");
        String part = inRow ? row : field.path();
        parts.computeIfAbsent(part, key -> new ArrayList<>()).add(told(field));
      }
    }
    List<String> told = new ArrayList<>();
    parts.values().forEach(part -> told.add(joined(part)));
    return String.join("; ", told) + ".";
  }

  /** {@code inner wall from 0 mm to 40 mm, sound}. */
  private static String joined(List<String> part) {
    return String.join(", ", part).replaceAll(", (from|to) ", " $1 ");
  }

  /** A list of rows is told by its rows; one without any as such. */
  private static boolean rows(FieldValue field) {
    return field.field().kind() instanceof FieldRows
        && field.value() instanceof List<?> list
        && !list.isEmpty();
  }

  private String told(FieldValue field) {
    String name = field.field().name();
    String value = value(field);
    return switch (name) {
      case "limb" -> value;
      case "from", "to" -> name + " " + value;
      case "side" -> value + (field.path().contains("cracks[") ? " side" : " wall");
      case "state" -> value;
      case "ageYears" -> "age " + Numbers.withUnit(value, "years");
      case "ageDays" -> "age " + Numbers.withUnit(value, "days");
      case "place" -> value + " crack";
      default -> field.field().label() + (value.matches("[a-z].*") ? ": " : " ") + value;
    };
  }

  private String value(FieldValue field) {
    String value = noted.value(field);
    return value.matches("[a-z -]+") ? PlainWords.of(value) : value;
  }

  /** {@code lameness grade 4 in place of 5}. */
  public String change(FiredCase fired) {
    String path = fired.example().nearMiss();
    path = path.substring(0, path.indexOf('=')).strip();
    String before = at(path, fired.example().assessment());
    String after = at(path, fired.nearMiss());
    return FieldNames.of(path) + ": " + after + ", in place of " + before;
  }

  private String at(String path, Assessment assessment) {
    AssessmentEdit edit = AssessmentEdit.of(path);
    Object value = edit.value(assessment);
    return value == null ? "not looked at" : value(new FieldValue(edit.field(), path, value));
  }
}
