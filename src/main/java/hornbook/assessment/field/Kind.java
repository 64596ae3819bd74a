package hornbook.assessment.field;

/** What may stand in a field. */
public sealed interface Kind permits ScalarKind, WordList, FieldHolder {
  /** What is allowed, in plain words. */
  String allowed();
}
