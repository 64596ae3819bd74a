package hornbook.cli.base;

/** Something that cannot be done as asked, in words for the user. */
public final class Failure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final ExitCode code;

  private Failure(ExitCode code, String text) {
    super(ScreenSafe.of(text), null, false, false);
    this.code = code;
  }

  /** What is the matter, then where it is and what to do about it, one line each. */
  public static Failure of(ExitCode code, String what, String... then) {
    StringBuilder text = new StringBuilder("hornbook: ").append(what).append('\n');
    for (String line : then) {
      text.append("  ").append(line).append('\n');
    }
    return new Failure(code, text.toString());
  }

  /** The command was not given as it has to be. */
  public static Failure usage(String what, String... then) {
    return of(ExitCode.USAGE, what, then);
  }

  /** Text laid out already, ending in a line break. */
  public static Failure told(ExitCode code, String text) {
    return new Failure(code, text);
  }

  public ExitCode code() {
    return code;
  }

  /** All of it, as it is shown. */
  public String text() {
    return getMessage();
  }
}
