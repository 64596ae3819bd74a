package hornbook.rulebook.file;

/**
 * Something wrong in a rule base: where, what, and how to cure it. {@code line} is 0 where the
 * whole file is meant, {@code rule} empty where no rule is.
 */
public record RuleFault(String file, int line, String rule, String says, String cure)
    implements Comparable<RuleFault> {

  /** Words that begin what is said of a file nothing can be made of. */
  public static final String UNREADABLE = "not readable";

  /** Whether the whole file could not be read: then what it would have held is not missed. */
  boolean unreadable() {
    return says.startsWith(UNREADABLE);
  }

  /** Where it is: {@code nailing/count.drl:25}, or the file alone. */
  public String place() {
    return line > 0 ? file + ":" + line : file;
  }

  /** One line for people. */
  public String text() {
    return place()
        + ": "
        + (rule.isEmpty() ? "" : rule + ": ")
        + says
        + (cure.isEmpty() ? "" : "\n    " + cure);
  }

  @Override
  public int compareTo(RuleFault other) {
    int byFile = file.compareTo(other.file);
    int byLine = byFile != 0 ? byFile : Integer.compare(line, other.line);
    return byLine != 0 ? byLine : text().compareTo(other.text());
  }
}
