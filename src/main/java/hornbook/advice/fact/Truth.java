package hornbook.advice.fact;

/** Whether something holds: what was not looked at is unknown, and never taken for no. */
public enum Truth {
  TRUE,
  FALSE,
  UNKNOWN;

  public static Truth of(boolean holds) {
    return holds ? TRUE : FALSE;
  }

  public Truth not() {
    return this == UNKNOWN ? UNKNOWN : of(this == FALSE);
  }

  /** All have to hold: one that does not settles it, one unknown leaves it open. */
  public Truth and(Truth other) {
    if (this == FALSE || other == FALSE) {
      return FALSE;
    }
    return this == TRUE && other == TRUE ? TRUE : UNKNOWN;
  }

  /** One has to hold. */
  public Truth or(Truth other) {
    if (this == TRUE || other == TRUE) {
      return TRUE;
    }
    return this == FALSE && other == FALSE ? FALSE : UNKNOWN;
  }
}
