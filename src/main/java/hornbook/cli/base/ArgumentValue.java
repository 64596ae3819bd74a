package hornbook.cli.base;

import picocli.CommandLine.Model.IGetter;
import picocli.CommandLine.Model.ISetter;

/** What an argument holds: what was given on the command line, or else the usual. */
public final class ArgumentValue<T> implements IGetter, ISetter {
  private T value;

  ArgumentValue(T usual) {
    value = usual;
  }

  public T value() {
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
