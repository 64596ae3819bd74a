package hornbook.assessment.read;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.FormatName;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.RecordShape;
import hornbook.assessment.tree.FieldPath;
import java.util.ArrayList;
import java.util.List;

/**
 * A change of one field, looked up once and then made as often as wanted: on records, without text.
 *
 * <pre>{@code
 * AssessmentEdit pulse = AssessmentEdit.of("feet[0].signs.digitalPulse");
 * Assessment changed = pulse.with(assessment, DigitalPulse.BOUNDING);
 * }</pre>
 */
public final class AssessmentEdit {
  private final Field field;
  private final FieldPath path;
  private final RecordShape[] shapes;
  private final int[] indexes;

  private AssessmentEdit(Field field, FieldPath path) {
    this.field = field;
    this.path = path;
    int steps = path.steps().size();
    shapes = new RecordShape[steps];
    indexes = new int[steps];
    Kind kind = Fields.ASSESSMENT;
    for (int i = 0; i < steps; i++) {
      if (path.steps().get(i) instanceof FieldPath.Name name) {
        FieldHolder holder = (FieldHolder) kind;
        shapes[i] = holder.shape();
        indexes[i] = holder.place(name.key());
        kind = holder.fields().get(indexes[i]).kind();
      } else if (path.steps().get(i) instanceof FieldPath.Index index) {
        indexes[i] = index.number();
      }
    }
  }

  /**
   * The change of the field at a path such as {@code feet[0].wall[1].to}.
   *
   * @throws IllegalArgumentException when the format has no such field, or it holds no value of its
   *     own
   */
  public static AssessmentEdit of(String path) {
    FieldPath parsed = FieldPath.parse(path);
    Field field = parsed == null ? null : Fields.at(parsed);
    boolean rows =
        parsed != null && parsed.steps().stream().noneMatch(FieldPath.OfLimb.class::isInstance);
    boolean named =
        parsed != null && parsed.steps().get(parsed.steps().size() - 1) instanceof FieldPath.Name;
    if (field == null
        || !rows
        || !named
        || field.kind() instanceof FieldGroup
        || field.kind() instanceof FormatName) {
      throw new IllegalArgumentException("no field to change at " + path);
    }
    return new AssessmentEdit(field, parsed);
  }

  public Field field() {
    return field;
  }

  /** What the field holds: null when unknown, or when there is no such row. */
  public Object value(Assessment assessment) {
    Object here = assessment;
    for (int i = 0; i < shapes.length && here != null; i++) {
      if (shapes[i] != null) {
        here = shapes[i].take(here)[indexes[i]];
      } else {
        List<?> rows = (List<?>) here;
        here = indexes[i] < rows.size() ? rows.get(indexes[i]) : null;
      }
    }
    return here;
  }

  /**
   * The assessment with this field changed.
   *
   * @param value of the type of the record component; null for unknown
   * @throws IllegalArgumentException when the value is of another type, or there is no such row
   */
  public Assessment with(Assessment assessment, Object value) {
    Object kept = value instanceof List<?> list ? List.copyOf(list) : value;
    try {
      return (Assessment) changed(assessment, 0, kept);
    } catch (ClassCastException otherType) {
      throw new IllegalArgumentException("not a value of " + field.label() + ": " + value);
    }
  }

  private Object changed(Object here, int step, Object value) {
    if (step == shapes.length) {
      return value;
    }
    if (shapes[step] != null) {
      Object[] components = shapes[step].take(here);
      components[indexes[step]] = changed(components[indexes[step]], step + 1, value);
      return shapes[step].build(components);
    }
    if (!(here instanceof List<?> rows) || indexes[step] >= rows.size()) {
      throw new IllegalArgumentException("no such row: " + path);
    }
    List<Object> changed = new ArrayList<>(rows);
    changed.set(indexes[step], changed(rows.get(indexes[step]), step + 1, value));
    return List.copyOf(changed);
  }
}
