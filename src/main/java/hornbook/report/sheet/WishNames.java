package hornbook.report.sheet;

import hornbook.report.words.FieldNames;

/** Names what a sheet lacks: a field of the assessment, or a wish that was not said. */
final class WishNames {
  private static final String WEDGE = "--wedge";

  private WishNames() {}

  static String of(String field) {
    return field.equals(WEDGE) ? "angle of the heel wedge" : FieldNames.of(field);
  }
}
