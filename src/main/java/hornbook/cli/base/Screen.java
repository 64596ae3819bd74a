package hornbook.cli.base;

import hornbook.report.page.PageWidth;
import java.util.Map;

/**
 * What standard output is shown on.
 *
 * @param terminal whether it is a terminal
 * @param rows lines it holds; 0 when unknown
 * @param columns a line may take
 * @param chosen whether the user has said so many columns, by {@code COLUMNS}
 * @param paged whether what is longer than the screen goes to a pager
 */
public record Screen(boolean terminal, int rows, int columns, boolean chosen, boolean paged) {
  /** No terminal: a file or another program. */
  public static final Screen NONE = new Screen(false, 0, PageWidth.USUAL, false, false);

  /** What the launcher has seen, {@code rows columns}, unless the environment says otherwise. */
  static Screen ofProcess(Map<String, String> environment) {
    boolean terminal = Boolean.getBoolean("hornbook.terminal");
    String[] seen = System.getProperty("hornbook.screen", "").split(" ");
    int rows = number(environment.get("LINES"), number(seen[0], 0));
    int wide = number(environment.get("COLUMNS"), 0);
    int columns = wide > 0 ? wide : number(seen[seen.length - 1], PageWidth.USUAL);
    return new Screen(terminal, terminal ? rows : 0, columns, wide > 0, terminal && rows > 0);
  }

  Screen unpaged() {
    return new Screen(terminal, rows, columns, chosen, false);
  }

  /** The columns for what goes to it, or to a file if {@code file}. */
  public int columns(boolean file) {
    return chosen || terminal && !file ? columns : PageWidth.USUAL;
  }

  private static int number(String text, int otherwise) {
    boolean digits = text != null && text.matches("[1-9][0-9]{0,4}");
    return digits ? Integer.parseInt(text) : otherwise;
  }
}
