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
    int place = place(name);
    return place < 0 ? null : fields().get(place);
  }

  /** The place among the fields of that name, or -1. */
  default int place(String name) {
    List<Field> fields = fields();
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
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
