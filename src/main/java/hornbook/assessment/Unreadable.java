package hornbook.assessment;

/** Stops the reading of a file of which no more sense can be made; never leaves this package. */
final class Unreadable extends RuntimeException {
  private final transient Fault fault;

  Unreadable(Fault fault) {
    super(fault.message(), null, false, false);
    this.fault = fault;
  }

  Fault fault() {
    return fault;
  }
}
