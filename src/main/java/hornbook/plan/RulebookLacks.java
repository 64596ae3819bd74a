package hornbook.plan;

/** The rule base in use has not all that a job sheet takes from it. */
public final class RulebookLacks extends RuntimeException {
  private static final long serialVersionUID = 1L;

  RulebookLacks(String what) {
    super("the rule base has no " + what, null, false, false);
  }
}
