package hornbook.report.page;

/**
 * Part of a page that is folded on a telephone until it is touched, without a script. On a wide
 * screen and on paper the style sheet holds it open.
 */
public final class Fold {
  private Fold() {}

  /**
   * Begins it with a heading of the third level.
   *
   * @param open whether it is open on a telephone too, and can be folded
   */
  public static void begin(String heading, boolean open, Markup page) {
    if (open) {
      page.open("details", "open", "");
    } else {
      page.open("details");
    }
    page.open("summary").element("h3", heading).close("summary").line();
  }

  public static void end(Markup page) {
    page.close("details").line();
  }
}
