package hornbook.cli.base;

/**
 * What the program says to the shell when it ends. From 64 up the numbers are those of the BSD
 * header {@code sysexits.h}.
 */
public enum ExitCode {
  DONE(0),
  /** A referral is at least as urgent as {@code --fail-on} asks. */
  URGENCY_MET(1),
  /** A job sheet is refused: the advice rules the technique out, or the vet comes first. */
  REFUSED(1),
  /** A rule base has faults, or its cases leave something in it untested. */
  RULES_WANTING(1),
  /** A daybook was altered, or an entry of it is missing. */
  RECORD_FAULTY(1),
  USAGE(2),
  INVALID_INPUT(65),
  NO_INPUT(66),
  FAULT(70),
  CANNOT_WRITE(74);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  public int number() {
    return number;
  }
}
