package hornbook.study.measure;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.Amount;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;

/**
 * Something measured on the horse: one number, which stands in two fields where one stretch of wall
 * ends and the next begins.
 *
 * @param paths the fields that hold it
 * @param kind what numbers the fields take
 * @param value in the unit the records keep
 * @param error the limit that states its measuring error
 * @param plusMinus that error, in the unit the records keep
 * @param edge the edge that it divides, or null
 */
public record Measurement(
    List<String> paths,
    List<AssessmentEdit> edits,
    Amount kind,
    double value,
    Tool tool,
    Limit error,
    double plusMinus,
    Edge edge) {

  /** The ground edge of one side of one foot, by the places of foot and side in their lists. */
  public record Edge(int foot, int side) {}

  /** The first of the fields. */
  public String path() {
    return paths.get(0);
  }

  /** The same place on the edge, as it stands in another field too. */
  Measurement alsoIn(Measurement other) {
    List<String> both = new ArrayList<>(paths);
    both.addAll(other.paths);
    List<AssessmentEdit> all = new ArrayList<>(edits);
    all.addAll(other.edits);
    return new Measurement(
        List.copyOf(both), List.copyOf(all), kind, value, tool, error, plusMinus, edge);
  }

  /** Held to what the field takes. */
  public double within(double measured) {
    return Math.max(kind.leastKept(), Math.min(kind.mostKept(), measured));
  }

  /** The assessment with another value measured. */
  public Assessment with(Assessment assessment, double measured) {
    Double kept = within(measured);
    Assessment changed = assessment;
    for (AssessmentEdit edit : edits) {
      changed = edit.with(changed, kept);
    }
    return changed;
  }
}
