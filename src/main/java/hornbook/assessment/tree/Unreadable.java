package hornbook.assessment.tree;

/** Stops the reading of a file of which no more sense can be made; never leaves this package. */
public final class Unreadable extends RuntimeException {
  private final transient Fault fault;

  public Unreadable(Fault fault) {
    super(fault.message(), null, false, false);
    this.fault = fault;
  }

  public Fault fault() {
    return fault;
  }
}
