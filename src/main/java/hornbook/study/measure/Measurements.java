package hornbook.study.measure;

import hornbook.assessment.Assessment;
import hornbook.assessment.Side;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.quantity.Unit;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.tree.FieldPath;
import hornbook.rulebook.compile.MissingFromRulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.measure.Instruments.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds everything that was measured in an assessment. */
public final class Measurements {
  private static final double SAME_PLACE = 1e-6;

  private final Assessment assessment;
  private final Map<String, Limit> limits;
  private final List<Measurement> found = new ArrayList<>();

  private Measurements(Assessment assessment, Map<String, Limit> limits) {
    this.assessment = assessment;
    this.limits = limits;
  }

  /**
   * In the order of the table of fields. The middle of the toe, from which the edge is measured, is
   * no measure itself.
   *
   * @param limits those that hold for the foot in hand, with the measuring errors among them
   */
  public static List<Measurement> of(Assessment assessment, Map<String, Limit> limits) {
    Measurements measurements = new Measurements(assessment, limits);
    Fields.values(assessment).forEach(measurements::add);
    return List.copyOf(measurements.found);
  }

  private void add(FieldValue field) {
    Instrument instrument = Instruments.of(field.field(), field.path());
    if (instrument == null || field.value() == null) {
      return;
    }
    Measurement one = measurement(field, instrument);
    if (one.tool() == Tool.EDGE_TAPE && one.value() == 0) {
      return;
    }
    for (int at = 0; at < found.size(); at++) {
      if (samePlace(found.get(at), one)) {
        found.set(at, found.get(at).alsoIn(one));
        return;
      }
    }
    found.add(one);
  }

  private static boolean samePlace(Measurement one, Measurement other) {
    return one.edge() != null
        && one.edge().equals(other.edge())
        && Math.abs(one.value() - other.value()) < SAME_PLACE;
  }

  private Measurement measurement(FieldValue field, Instrument instrument) {
    Limit error = MissingFromRulebook.limit(limits, instrument.error());
    return new Measurement(
        List.of(field.path()),
        List.of(AssessmentEdit.of(field.path())),
        (Amount) field.field().kind(),
        (Double) field.value(),
        instrument.tool(),
        error,
        kept(error),
        instrument.tool() == Tool.EDGE_TAPE ? edge(field.path()) : null);
  }

  /** The edge a stretch is part of; one whose side was not noted is an edge of its own. */
  private Measurement.Edge edge(String path) {
    List<FieldPath.Step> steps = FieldPath.parse(path).steps();
    int foot = ((FieldPath.Index) steps.get(1)).number();
    int row = ((FieldPath.Index) steps.get(3)).number();
    Side side = assessment.feet().get(foot).wall().get(row).side();
    return new Measurement.Edge(foot, side == null ? -1 - row : side.ordinal());
  }

  private static double kept(Limit error) {
    for (Unit unit : Unit.values()) {
      if (unit.symbol().equals(error.unit())) {
        return unit.toKept(error.value());
      }
    }
    throw new IllegalStateException(error.id() + " has no unit of measure");
  }
}
