package hornbook.report.page;

/**
 * The columns a line of a text page may take. It is that of the screen the program writes to, one
 * for the whole process, and is set before the first page is made; 80 where nobody has set it.
 */
public final class PageWidth {
  public static final int USUAL = 80;
  public static final int LEAST = 40;
  public static final int MOST = 120;

  private static volatile int columns = USUAL;

  private PageWidth() {}

  public static int columns() {
    return columns;
  }

  /** Takes a screen's columns, held between the least and the most that can be read. */
  public static void set(int screen) {
    columns = Math.max(LEAST, Math.min(MOST, screen));
  }
}
