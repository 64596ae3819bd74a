package hornbook.study.measure;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What stands in the fields of an assessment, found by path. */
public final class RecordedFields {
  /** What stands in for a field that is unknown where a reading is known all the same. */
  private static final Map<String, List<String>> IN_PLACE_OF =
      Map.of("horse.weight", List.of("horse.girth", "horse.bodyLength"));

  private final Map<String, FieldValue> byPath = new HashMap<>();
  private final Map<String, String> feet = new HashMap<>();

  public RecordedFields(Assessment assessment) {
    Fields.values(assessment).forEach(field -> byPath.put(field.path(), field));
    for (int at = 0; at < assessment.feet().size(); at++) {
      Limb limb = assessment.feet().get(at).limb();
      feet.put("feet[" + limb.word() + "]", "feet[" + at + "]");
    }
  }

  /**
   * The fields at these paths, each once. A weight that was not taken is followed by what it was
   * estimated from.
   */
  public List<FieldValue> of(Collection<String> paths) {
    List<FieldValue> found = new ArrayList<>();
    for (String path : paths) {
      FieldValue field = at(path);
      List<FieldValue> instead =
          IN_PLACE_OF.getOrDefault(path, List.of()).stream().map(this::at).toList();
      boolean replaced =
          field != null
              && field.value() == null
              && !instead.isEmpty()
              && instead.stream().allMatch(one -> one.value() != null);
      if (replaced) {
        found.addAll(instead);
      } else if (field != null && !found.contains(field)) {
        found.add(field);
      }
    }
    return List.copyOf(found);
  }

  /** The paths of the fields of this name on this foot. */
  public List<String> named(String name, String foot) {
    return byPath.values().stream()
        .filter(field -> field.field().name().equals(name))
        .map(FieldValue::path)
        .filter(path -> path.startsWith(foot + ".") || !path.startsWith("feet["))
        .sorted()
        .toList();
  }

  /** The field there; with the value unknown where the file has no such foot or row. */
  private FieldValue at(String path) {
    int end = path.indexOf(']') + 1;
    String foot = feet.get(path.substring(0, end));
    String here = foot == null ? path : foot + path.substring(end);
    FieldValue known = byPath.get(here);
    Field field = Fields.at(here);
    return known != null || field == null ? known : new FieldValue(field, here, null);
  }
}
