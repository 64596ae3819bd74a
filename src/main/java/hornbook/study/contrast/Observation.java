package hornbook.study.contrast;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.field.WordList;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.word.Word;
import hornbook.rulebook.fact.Limit;
import hornbook.study.measure.Measurement;
import hornbook.study.measure.Tool;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that was measured or seen on a horse, and that might have been measured or seen
 * otherwise.
 *
 * @param paths the fields that hold it: two for a place where one stretch of wall ends and the next
 *     begins
 * @param noted what stands there
 * @param error the limit that says how far it may be off
 * @param plusMinus one measuring error in the unit the records keep; for a sign how many measuring
 *     errors it counts as to have seen another
 * @param tool what it was measured with, or null
 */
public record Observation(
    List<String> paths,
    List<AssessmentEdit> edits,
    Field field,
    Object noted,
    Limit error,
    double plusMinus,
    Tool tool) {

  static Observation measured(Measurement measurement) {
    return new Observation(
        measurement.paths(),
        measurement.edits(),
        measurement.edits().get(0).field(),
        measurement.value(),
        measurement.error(),
        measurement.plusMinus(),
        measurement.tool());
  }

  static Observation seen(String path, Field field, Object noted, Limit error) {
    List<AssessmentEdit> edits = List.of(AssessmentEdit.of(path));
    return new Observation(List.of(path), edits, field, noted, error, error.value(), null);
  }

  /** The first of the fields. */
  public String path() {
    return paths.get(0);
  }

  /** Whether it is a number: measured, graded or counted. */
  public boolean number() {
    return noted instanceof Number;
  }

  /** How far another value is from what was noted, in measuring errors. */
  public double errors(Object value) {
    if (value instanceof Number other) {
      return Math.abs(other.doubleValue() - ((Number) noted).doubleValue()) / plusMinus;
    }
    return plusMinus * (value instanceof List<?> list ? differing(list) : 1);
  }

  /** How many words were added or taken out. */
  private int differing(List<?> list) {
    List<Object> differing = new ArrayList<>(list);
    differing.removeAll((List<?>) noted);
    List<Object> gone = new ArrayList<>((List<?>) noted);
    gone.removeAll(list);
    return differing.size() + gone.size();
  }

  /** The assessment with another value in place of what was noted. */
  public Assessment with(Assessment assessment, Object value) {
    Assessment changed = assessment;
    for (AssessmentEdit edit : edits) {
      changed = edit.with(changed, value);
    }
    return changed;
  }

  /** A value as it is written in a file and on the command line; exact. */
  String written(Object value, Units units) {
    if (field.kind() instanceof Amount amount) {
      return amount.write((Double) value, units);
    }
    if (field.kind() instanceof WordList) {
      List<String> words = new ArrayList<>();
      ((List<?>) value).forEach(word -> words.add(((Word) word).word()));
      return "[" + String.join(", ", words) + "]";
    }
    return ((ScalarKind) field.kind()).write(value);
  }
}
