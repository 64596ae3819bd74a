package hornbook.interview;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Kind;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.tree.FieldPath;
import java.util.ArrayList;
import java.util.List;

/** Paths to fields, also to those of a foot that is not in the assessment yet. */
final class InterviewPaths {
  private static final int NOT_THERE = 9;
  private static final String FEET = "feet[";

  private InterviewPaths() {}

  static String foot(int index) {
    return FEET + index + "].";
  }

  /** With the place of the foot in the list instead of its name, where it is in the list. */
  static String numbered(Assessment assessment, String path) {
    if (!namesFoot(path)) {
      return path;
    }
    for (int i = 0; i < assessment.feet().size(); i++) {
      String named = FEET + assessment.feet().get(i).limb().word() + "].";
      if (path.startsWith(named)) {
        return foot(i) + path.substring(named.length());
      }
    }
    return path;
  }

  /** With the name of the foot instead of its place in the list: it stays when feet are added. */
  static String named(Assessment assessment, String path) {
    for (int i = 0; i < assessment.feet().size(); i++) {
      if (path.startsWith(foot(i))) {
        String limb = assessment.feet().get(i).limb().word();
        return FEET + limb + "]." + path.substring(foot(i).length());
      }
    }
    return path;
  }

  /** The value of a field, null when unknown or when there is no such foot. */
  static Object value(Assessment assessment, String path) {
    String numbered = numbered(assessment, path);
    return limb(numbered) == null ? AssessmentEdit.of(numbered).value(assessment) : null;
  }

  /** The assessment with a field changed; a foot that was not there is added. */
  static Assessment with(Assessment assessment, String path, Object value) {
    Assessment with = assessment;
    String numbered = numbered(with, path);
    Limb missing = limb(numbered);
    if (missing != null) {
      List<Foot> feet = new ArrayList<>(with.feet());
      feet.addAll(BlankAssessment.of(List.of(missing)).feet());
      with = AssessmentEdit.of("feet").with(with, feet);
      numbered = numbered(with, path);
    }
    return AssessmentEdit.of(numbered).with(with, value);
  }

  private static boolean namesFoot(String path) {
    return path.startsWith(FEET) && !Character.isDigit(path.charAt(FEET.length()));
  }

  /** The foot a path names, where it does. */
  private static Limb limb(String path) {
    if (!namesFoot(path)) {
      return null;
    }
    for (FieldPath.Step step : FieldPath.parse(path).steps()) {
      if (step instanceof FieldPath.OfLimb foot) {
        return foot.limb();
      }
    }
    return null;
  }

  /** Sorts paths in the order of the table of fields: the order in which a farrier looks. */
  static String order(Assessment assessment, String path) {
    StringBuilder order = new StringBuilder();
    Kind here = Fields.ASSESSMENT;
    for (FieldPath.Step step : FieldPath.parse(numbered(assessment, path)).steps()) {
      int place = NOT_THERE;
      if (step instanceof FieldPath.Name name) {
        FieldHolder holder = (FieldHolder) here;
        place = holder.place(name.key());
        here = holder.fields().get(place).kind();
      } else if (step instanceof FieldPath.Index index) {
        place = index.number();
      }
      order.append((char) ('a' + place));
    }
    return order.toString();
  }

  /** What stands before the number of a row in a path: {@code feet[0].cracks}; null for no row. */
  static String list(String path) {
    int row = path.lastIndexOf('[');
    return row > path.indexOf('[') ? path.substring(0, row) : null;
  }
}
