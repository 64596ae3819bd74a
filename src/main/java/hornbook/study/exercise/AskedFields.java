package hornbook.study.exercise;

import hornbook.assessment.Foot;
import hornbook.assessment.field.Fields;
import hornbook.assessment.tree.FieldPath;
import java.util.List;

/** Names of fields as learners write them, made paths of the assessment. */
public final class AskedFields {
  private AskedFields() {}

  /**
   * The full path of {@code feet[0].signs.hoofHeat}, {@code signs.hoofHeat}, {@code hoofHeat} or
   * {@code horse.weight}; null where there is no such field.
   *
   * @param foot the place of the foot in hand in the assessment
   */
  public static String path(String written, List<Foot> feet, int foot) {
    FieldPath parsed = FieldPath.parse(written);
    if (parsed == null) {
      return null;
    }
    String path = numbered(written, feet);
    if (Fields.at(path) != null) {
      return path;
    }
    if (Fields.ofFoot(written) != null) {
      return "feet[" + foot + "]." + written;
    }
    return parsed.steps().size() > 1 ? null : byName(written, foot);
  }

  private static String numbered(String written, List<Foot> feet) {
    String path = written;
    for (int at = 0; at < feet.size(); at++) {
      path = path.replace("feet[" + feet.get(at).limb().word() + "]", "feet[" + at + "]");
    }
    return path;
  }

  private static String byName(String name, int foot) {
    for (String group : List.of("signs.", "measures.")) {
      if (Fields.ofFoot(group + name) != null) {
        return "feet[" + foot + "]." + group + name;
      }
    }
    for (String group : List.of("horse.", "visit.", "kit.")) {
      if (Fields.at(group + name) != null) {
        return group + name;
      }
    }
    return null;
  }
}
