package hornbook.assessment.field;

import hornbook.assessment.tree.LocatedValue.Scalar;

/** The name of the format itself, so that a file says what it is. */
public record FormatName(String name) implements ScalarKind {
  @Override
  public Class<?> type() {
    return String.class;
  }

  @Override
  public Taken take(Scalar scalar) {
    return scalar.text().equals(name)
        ? new Taken.Value(name)
        : new Taken.Refused(scalar.kind(), name);
  }

  @Override
  public String allowed() {
    return name;
  }

  @Override
  public String write(Object value) {
    return name;
  }
}
