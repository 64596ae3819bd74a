package hornbook.assessment.field;

import java.util.List;

/**
 * A list of groups.
 *
 * @param least the fewest rows
 * @param most the most rows
 * @param emptyIsNone whether an empty list says "looked for, and none"; if not it says nothing
 */
public record FieldRows(
    RecordShape shape, List<Field> fields, int least, int most, boolean emptyIsNone)
    implements FieldHolder {
  @Override
  public boolean holds(Object rows) {
    int count = ((List<?>) rows).size();
    return count >= least && count <= most;
  }

  @Override
  public String allowed() {
    String count = least > 0 ? least + " to " + most : "up to " + most;
    String none = emptyIsNone ? "; [] or none when there is none" : "";
    return "a list of " + count + " groups of: " + String.join(", ", names()) + none;
  }
}
