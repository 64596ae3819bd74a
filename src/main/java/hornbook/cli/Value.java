package hornbook.cli;

import picocli.CommandLine.Model.IGetter;
import picocli.CommandLine.Model.ISetter;

/** What an argument holds: what was given on the command line, or else the usual. */
final class Value<T> implements IGetter, ISetter {
  private T value;

  Value(T usual) {
    value = usual;
  }

  T value() {
    return value;
  }

  @Override
  @SuppressWarnings("unchecked")
  public <V> V get() {
    return (V) value;
  }

  @Override
  @SuppressWarnings("unchecked")
  public <V> V set(V given) {
    V before = (V) value;
    value = (T) given;
    return before;
  }
}
