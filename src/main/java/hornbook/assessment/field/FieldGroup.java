package hornbook.assessment.field;

import java.util.List;

/** A group of fields. */
public record FieldGroup(RecordShape shape, List<Field> fields) implements FieldHolder {
  @Override
  public String allowed() {
    return "a group of fields: " + String.join(", ", names());
  }
}
