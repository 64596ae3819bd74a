package hornbook.assessment.field;

import hornbook.assessment.tree.LocatedValue.Scalar;

/** What may stand in a field that holds one value. */
public sealed interface ScalarKind extends Kind
    permits OneWord, Flag, WholeNumber, Amount, ShortText, Day, FormatName {
  /** The type of the value in the records. */
  Class<?> type();

  /** Reads a value that is not {@code unknown}. */
  Taken take(Scalar scalar);

  /** A value as it is written in a file. */
  String write(Object value);

  /** What came of reading a value. */
  sealed interface Taken {
    /** A value; null is unknown. */
    record Value(Object value) implements Taken {}

    /** No value: what was found, and the nearest known word or null. */
    record Refused(String found, String nearest) implements Taken {}
  }

  /** Refuses a value. */
  default Taken refuse(Scalar scalar) {
    return new Taken.Refused(scalar.kind(), null);
  }
}
