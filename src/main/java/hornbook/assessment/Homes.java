package hornbook.assessment;

/** Where in the format a field belongs that stands in the wrong group. */
final class Homes {
  private Homes() {}

  /** The path of the first field of that name, such as {@code feet[].signs.hoofHeat}; or null. */
  static String of(String name) {
    return in(Fields.ASSESSMENT, "", name);
  }

  private static String in(FieldHolder holder, String path, String name) {
    for (Field field : holder.fields()) {
      String here = Located.under(path, field.name());
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
