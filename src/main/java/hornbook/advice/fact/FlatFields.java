package hornbook.advice.fact;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.FormatName;
import hornbook.assessment.field.Kind;
import hornbook.assessment.tree.LocatedValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The fields of an assessment that say something of one foot, in the order of the table: those of
 * horse, visit and kit, and the foot's own. A list of rows stands for itself, without the fields of
 * its rows, so that every assessment has the same fields: their paths are worked out once.
 */
final class FlatFields {
  private static final Map<Integer, FlatFields> KNOWN = new ConcurrentHashMap<>();

  private final int foot;
  private final List<Spot> spots = new ArrayList<>();

  private record Spot(Field field, String path) {}

  /** Takes a field, its path and its value, null where unknown. */
  interface Taker {
    void take(Field field, String path, Object value);
  }

  private FlatFields(int foot) {
    this.foot = foot;
    spots(Fields.ASSESSMENT, "");
  }

  /** The fields that belong to the foot at this place of an assessment. */
  static FlatFields of(int foot) {
    return KNOWN.computeIfAbsent(foot, FlatFields::new);
  }

  private void spots(FieldHolder holder, String path) {
    for (Field field : holder.fields()) {
      String here = LocatedValue.under(path, field.name());
      if (field.kind() instanceof FieldGroup group) {
        spots(group, here);
      } else if (field.kind() == Fields.FEET) {
        spots(Fields.FEET, here + "[" + foot + "]");
      } else if (!(field.kind() instanceof FormatName)) {
        spots.add(new Spot(field, here));
      }
    }
  }

  /** Hands over every field with what it holds. */
  void each(Assessment assessment, Taker to) {
    each(Fields.ASSESSMENT, assessment, 0, to);
  }

  /** Returns the number of the next field. */
  private int each(FieldHolder holder, Object record, int first, Taker to) {
    Object[] components = holder.shape().take(record);
    int at = first;
    for (int i = 0; i < components.length; i++) {
      Kind kind = holder.fields().get(i).kind();
      if (kind instanceof FieldGroup group) {
        at = each(group, components[i], at, to);
      } else if (kind == Fields.FEET) {
        at = each(Fields.FEET, ((List<?>) components[i]).get(foot), at, to);
      } else if (!(kind instanceof FormatName)) {
        Spot spot = spots.get(at++);
        to.take(spot.field, spot.path, components[i]);
      }
    }
    return at;
  }
}
