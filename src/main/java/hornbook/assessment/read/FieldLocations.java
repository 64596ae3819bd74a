package hornbook.assessment.read;

import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.Fields;
import hornbook.assessment.tree.LocatedValue;

/** Where in the format a field belongs that stands in the wrong group. */
final class FieldLocations {
  private FieldLocations() {}

  /** The path of the first field of that name, such as {@code feet[].signs.hoofHeat}; or null. */
  static String of(String name) {
    return in(Fields.ASSESSMENT, "", name);
  }

  private static String in(FieldHolder holder, String path, String name) {
    for (Field field : holder.fields()) {
      String here = LocatedValue.under(path, field.name());
      if (field.name().equals(name)) {
        return here;
      }
      if (field.kind() instanceof FieldHolder inner) {
        String found = in(inner, inner instanceof FieldRows ? here + "[]" : here, name);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }
}
