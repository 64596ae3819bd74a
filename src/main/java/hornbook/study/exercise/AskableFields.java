package hornbook.study.exercise;

import hornbook.assessment.Limb;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.tree.Nearest;
import java.util.List;

/** Every field that can be asked for, by the name it has in the file. */
public final class AskableFields {
  private static final String FOOT = "feet[0].";

  private AskableFields() {}

  /** {@code horse.weight}, {@code signs.digitalPulse} and so on, in the order of the table. */
  public static List<String> names() {
    return Fields.values(BlankAssessment.of(List.of(Limb.LEFT_FORE)))
        .map(FieldValue::path)
        .map(path -> path.startsWith(FOOT) ? path.substring(FOOT.length()) : path)
        .filter(path -> !path.equals("limb") && !path.equals("format"))
        .toList();
  }

  /** The name nearest to one that is not known, with its group or without; null with none. */
  public static String nearest(String written) {
    List<String> names = names();
    String whole = Nearest.of(written, names);
    if (whole != null) {
      return whole;
    }
    List<String> bare = names.stream().map(AskableFields::bare).toList();
    String nearest = Nearest.of(written, bare);
    return nearest == null ? null : names.get(bare.indexOf(nearest));
  }

  private static String bare(String name) {
    return name.substring(name.lastIndexOf('.') + 1);
  }
}
