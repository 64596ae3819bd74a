package hornbook.assessment.field;

/**
 * One field of the assessment format.
 *
 * @param name the key in a file
 * @param kind what may stand there
 * @param label a short name in trade words
 * @param how how to look or measure, one line in plain words
 * @param required whether a file without it is refused; every other field may be left out
 * @param fixed whether it is so whatever anybody measures or sees: a name, an age, a record, whose
 *     side it is; nothing is made of its having been otherwise
 */
public record Field(
    String name, Kind kind, String label, String how, boolean required, boolean fixed) {
  Field(String name, Kind kind, String label, String how, boolean required) {
    this(name, kind, label, how, required, false);
  }

  Field asRequired() {
    return new Field(name, kind, label, how, true, fixed);
  }

  Field asFixed() {
    return new Field(name, kind, label, how, required, true);
  }
}
