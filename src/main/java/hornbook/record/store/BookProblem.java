package hornbook.record.store;

/** Something about a daybook that keeps it from being read or written, in words for the user. */
public final class BookProblem extends Exception {
  private static final long serialVersionUID = 1L;

  /** What kind of thing it is. */
  public enum Kind {
    /** There is no such book or entry. */
    MISSING,
    /** It cannot be read or written. */
    DISK,
    /** It was asked for in a way that makes no sense. */
    USAGE
  }

  private final Kind kind;
  private final String cure;

  public BookProblem(Kind kind, String what, String cure) {
    super(what);
    this.kind = kind;
    this.cure = cure;
  }

  public Kind kind() {
    return kind;
  }

  /** What to do about it. */
  public String cure() {
    return cure;
  }
}
