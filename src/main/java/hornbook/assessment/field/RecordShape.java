package hornbook.assessment.field;

/**
 * How a record is taken apart and put together, with its components in the order of the table of
 * fields. Written out rather than looked up by reflection: that costs a cold start more than the
 * reading itself, and thousands of changes their time.
 */
public abstract class RecordShape {
  abstract Class<? extends Record> type();

  /** The components of a record. */
  public abstract Object[] take(Object record);

  /** The record of these components. */
  public abstract Object build(Components components);

  /**
   * The record of these components.
   *
   * @throws ClassCastException when one is of another type
   */
  public final Object build(Object[] components) {
    return build(new Components(components));
  }

  /** Components handed out one after the other, each as the type it is wanted as. */
  static final class Components {
    private final Object[] components;
    private int at;

    private Components(Object[] components) {
      this.components = components;
    }

    @SuppressWarnings("unchecked")
    <T> T next() {
      return (T) components[at++];
    }
  }
}
