package hornbook.report.page;

import hornbook.assessment.quantity.Units;
import hornbook.report.words.Detail;

/**
 * How a text is to be written.
 *
 * @param colour whether headings are set off by the colours of a terminal; the words say the same
 *     without them
 * @param width the columns a line may take, at least 40
 */
public record TextOptions(Units units, Detail detail, boolean colour, int width) {
  public static final int USUAL_WIDTH = PageWidth.USUAL;

  public TextOptions {
    width = Math.max(PageWidth.LEAST, width);
  }

  /** Plain text of the usual length and width. */
  public static TextOptions usual() {
    return new TextOptions(Units.MM, Detail.USUAL, false, PageWidth.USUAL);
  }

  public TextOptions with(Detail other) {
    return new TextOptions(units, other, colour, width);
  }
}
