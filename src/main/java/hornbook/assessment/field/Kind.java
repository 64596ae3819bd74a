package hornbook.assessment.field;

/** What may stand in a field. */
public sealed interface Kind permits ScalarKind, WordList, FieldHolder {
  /** What is allowed, in plain words. */
  String allowed();

  /** Whether a value of the right type, which is known, lies within what is allowed. */
  default boolean holds(Object value) {
    return true;
  }
}
