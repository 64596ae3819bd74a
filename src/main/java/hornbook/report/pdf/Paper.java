package hornbook.report.pdf;

/** The sheets a page can be printed on, in mm. */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }
}
