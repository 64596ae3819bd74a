package hornbook.bench;

/** What the start of Java itself takes: the yardstick of every start. */
public final class Bare {
  private Bare() {}

  public static void main(String[] arguments) {}
}
