package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.group;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.tree.FieldPath;
import hornbook.assessment.tree.LocatedValue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The one table of every field of the assessment format, as a tree. Files are checked by it,
 * records are built by it; the schema, the blank file and the interview are made from it.
 *
 * <p>The least and most of a field are our own judgement of what no horse can be, foal or draught;
 * they catch slips of the pen and are no limits of the trade.
 */
public final class Fields {
  /** The name of the format, which every file states. */
  public static final String FORMAT = "hornbook-assessment/1";

  /** One foot: the row of {@code feet}. */
  public static final FieldRows FEET = new FieldRows(FootFields.SHAPE, FootFields.ALL, 1, 4, false);

  /** The whole assessment. */
  public static final FieldGroup ASSESSMENT =
      new FieldGroup(
          new OfAssessment(),
          List.of(
              new Field(
                  "format",
                  new FormatName(FORMAT),
                  "format",
                  "Says what kind of file this is; leave it as it is.",
                  true),
              FieldTable.word(
                      "units",
                      Units.values(),
                      "units of the file",
                      "What a number without a unit counts as: mm, kg and Celsius, or inches, lb"
                          + " and Fahrenheit.")
                  .asFixed(),
              group("horse", HorseFields.SHAPE, "horse", "The whole animal.", HorseFields.ALL),
              group("visit", VisitFields.SHAPE, "visit", "Today, and the place.", VisitFields.ALL),
              new Field("feet", FEET, "feet", "One entry for each foot looked at.", true),
              group("kit", KitFields.SHAPE, "kit", "What is in the van.", KitFields.ALL)));

  private Fields() {}

  /** The field at a path such as {@code feet[0].signs.digitalPulse}; null when there is none. */
  public static Field at(String path) {
    FieldPath parsed = FieldPath.parse(path);
    return parsed == null ? null : at(parsed);
  }

  /** The field at a path; null when there is none. */
  public static Field at(FieldPath path) {
    return at(ASSESSMENT, path);
  }

  /** The field of one foot at a path such as {@code signs.digitalPulse}; null with none. */
  public static Field ofFoot(String path) {
    FieldPath parsed = FieldPath.parse(path);
    return parsed == null ? null : at(FEET, parsed);
  }

  private static Field at(FieldHolder from, FieldPath path) {
    Field field = null;
    Kind here = from;
    boolean atRows = false;
    for (FieldPath.Step step : path.steps()) {
      if (step instanceof FieldPath.Name name) {
        boolean among = here instanceof FieldHolder && !atRows;
        field = among ? ((FieldHolder) here).field(name.key()) : null;
        if (field == null) {
          return null;
        }
        here = field.kind();
        atRows = here instanceof FieldRows;
      } else if (atRows) {
        atRows = false;
      } else {
        return null;
      }
    }
    return field;
  }

  /**
   * Every field of an assessment with its path and value, null where unknown, in the order of the
   * table. A list of rows that may be unknown stands for itself, followed by the fields of its
   * rows.
   */
  public static Stream<FieldValue> values(Assessment assessment) {
    List<FieldValue> values = new ArrayList<>();
    collect(ASSESSMENT, assessment, "", values);
    return values.stream();
  }

  /** The same for one foot, the one at that place in the list of feet. */
  public static Stream<FieldValue> values(Foot foot, int index) {
    List<FieldValue> values = new ArrayList<>();
    collect(FEET, foot, "feet[" + index + "]", values);
    return values.stream();
  }

  private static void collect(FieldHolder holder, Object record, String path, List<FieldValue> to) {
    Object[] components = holder.shape().take(record);
    for (int i = 0; i < components.length; i++) {
      Field field = holder.fields().get(i);
      Object value = components[i];
      String here = LocatedValue.under(path, field.name());
      if (field.kind() instanceof FieldGroup group) {
        collect(group, value, here, to);
        continue;
      }
      boolean itself = !(field.kind() instanceof FormatName) && field.kind() != FEET;
      if (itself) {
        to.add(new FieldValue(field, here, value));
      }
      if (field.kind() instanceof FieldRows rows && value instanceof List<?> list) {
        for (int row = 0; row < list.size(); row++) {
          collect(rows, list.get(row), here + "[" + row + "]", to);
        }
      }
    }
  }

  private static final class OfAssessment extends RecordShape {
    @Override
    Class<Assessment> type() {
      return Assessment.class;
    }

    @Override
    public Object[] take(Object record) {
      Assessment r = (Assessment) record;
      return new Object[] {Fields.FORMAT, r.units(), r.horse(), r.visit(), r.feet(), r.kit()};
    }

    @Override
    public Object build(Components c) {
      c.next();
      return new Assessment(c.next(), c.next(), c.next(), c.next(), c.next());
    }
  }
}
