package hornbook.assessment.form;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Day;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.tree.LocatedValue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * An assessment to be filled in: YAML with a line on every field, made from the table of fields.
 * What is already known stands in it; all else is {@code unknown}.
 */
public final class BlankAssessment {
  private static final List<String> GREETING =
      List.of(
          "An assessment, to be filled in. Put what you saw or measured in place of unknown.",
          "What was not looked at stays unknown, which is not the same as normal.");

  private static final List<Limb> UNNAMED = Collections.singletonList(null);

  private final Units units;
  private final CommentedYaml yaml = new CommentedYaml();

  private BlankAssessment(Units units) {
    this.units = units;
  }

  /** Of these feet nothing is known; with none, of one foot that has yet to be named. */
  public static Assessment of(List<Limb> limbs) {
    List<Foot> feet = new ArrayList<>();
    for (Limb limb : limbs.isEmpty() ? UNNAMED : limbs) {
      Object[] fields = blank(Fields.FEET);
      fields[Fields.FEET.place("limb")] = limb;
      feet.add((Foot) Fields.FEET.shape().build(fields));
    }
    Object[] fields = blank(Fields.ASSESSMENT);
    fields[Fields.ASSESSMENT.place("feet")] = feet;
    return (Assessment) Fields.ASSESSMENT.shape().build(fields);
  }

  /**
   * A blank file for these feet; with none, for one foot that has yet to be named.
   *
   * @param schema where the JSON Schema lies, for editors that use one; null for none
   */
  public static String write(List<Limb> limbs, Units units, String schema) {
    return write(of(limbs), units, schema);
  }

  /** The same, with everything filled in that is known. */
  public static String write(Assessment known, Units units, String schema) {
    BlankAssessment blank = new BlankAssessment(units);
    if (schema != null) {
      blank.yaml.verbatim("# yaml-language-server: $schema=" + schema);
    }
    GREETING.forEach(line -> blank.yaml.comment(0, line));
    String length = ((Amount) Fields.ofFoot("measures.toeLength").kind()).example(units);
    blank.yaml.comment(0, "A quantity is a number and its unit, such as " + length + ".");
    Assessment inUnits = AssessmentEdit.of("units").with(known, units);
    blank.fields(Fields.ASSESSMENT, inUnits, 0, true);
    return blank.yaml.toString();
  }

  private static Object[] blank(FieldHolder holder) {
    Object[] fields = new Object[holder.fields().size()];
    for (int i = 0; i < fields.length; i++) {
      if (holder.fields().get(i).kind() instanceof FieldGroup group) {
        fields[i] = group.shape().build(blank(group));
      }
    }
    return fields;
  }

  private void fields(FieldHolder holder, Object record, int indent, boolean explained) {
    Object[] values = holder.shape().take(record);
    for (int i = 0; i < values.length; i++) {
      Field field = holder.fields().get(i);
      if (explained) {
        yaml.comment(indent, capital(field.label()) + ". " + field.how());
      }
      if (field.kind() instanceof FieldGroup group) {
        yaml.line(indent, field.name() + ":", "");
        fields(group, values[i], indent + 2, explained);
      } else if (field.kind() instanceof FieldRows rows) {
        rows(field, rows, (List<?>) values[i], indent, explained);
      } else {
        String allowed = explained ? allowed(field) : "";
        yaml.line(indent, field.name() + ": " + written(field.kind(), values[i]), allowed);
      }
    }
  }

  private void rows(Field field, FieldRows rows, List<?> list, int indent, boolean explained) {
    if (list == null || list.isEmpty()) {
      String none = explained && rows.emptyIsNone() ? "[] when there is none" : "";
      yaml.line(indent, field.name() + ": " + (list == null ? LocatedValue.UNKNOWN : "[]"), none);
      if (explained) {
        yaml.comment(
            indent,
            "For each one a row like this under "
                + field.name()
                + ":, the first # of a line taken off.");
        yaml.outcommented(indent, () -> row(rows, rows.shape().build(blank(rows)), indent, true));
      }
      return;
    }
    yaml.line(indent, field.name() + ":", "");
    boolean first = explained;
    for (Object record : list) {
      row(rows, record, indent, first);
      first = false;
    }
  }

  private void row(FieldRows rows, Object record, int indent, boolean explained) {
    yaml.dash(indent + 2);
    fields(rows, record, indent + 4, explained);
  }

  private String written(Kind kind, Object value) {
    if (value == null) {
      return LocatedValue.UNKNOWN;
    }
    if (kind instanceof WordList list) {
      List<String> words = new ArrayList<>();
      for (Object word : (List<?>) value) {
        words.add(list.each().write(word));
      }
      return "[" + String.join(", ", words) + "]";
    }
    return kind instanceof Amount amount
        ? amount.write((Double) value, units)
        : ((ScalarKind) kind).write(value);
  }

  /** What may stand there, short enough for the end of a line. */
  private String allowed(Field field) {
    Kind kind = field.kind();
    if (kind instanceof OneWord word) {
      return String.join(" | ", word.words());
    }
    if (kind instanceof WordList list) {
      return "[] when there is none, or a list of " + String.join(", ", list.each().words());
    }
    if (kind instanceof Flag) {
      return "yes | no";
    }
    if (kind instanceof WholeNumber whole) {
      return whole.least() + " to " + whole.most();
    }
    if (kind instanceof Day) {
      return "year-month-day, such as 2026-03-14";
    }
    return kind instanceof Amount amount ? "such as " + amount.example(units) : "";
  }

  private static String capital(String label) {
    return label.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + label.substring(1);
  }
}
