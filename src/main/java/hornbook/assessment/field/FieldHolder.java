package hornbook.assessment.field;

import java.util.List;

/** What holds fields, and the record they make. */
public sealed interface FieldHolder extends Kind permits FieldGroup, FieldRows {
  /** The record the fields make. */
  default Class<? extends Record> type() {
    return shape().type();
  }

  RecordShape shape();

  List<Field> fields();

  /** The field of that name, or null. */
  default Field field(String name) {
    for (Field field : fields()) {
      if (field.name().equals(name)) {
        return field;
      }
    }
    return null;
  }

  /** The names of the fields. */
  default List<String> names() {
    String[] names = new String[fields().size()];
    for (int i = 0; i < names.length; i++) {
      names[i] = fields().get(i).name();
    }
    return List.of(names);
  }
}
