package hornbook.report.drawing;

/** The strokes of a drawing: they differ by weight and dashes, and hang on no colour. */
enum Pen {
  HEAVY("2.2", ""),
  LINE("1.2", ""),
  THIN("0.6", ""),
  DASHED("1", "5 2.5"),
  DOTTED("1.2", "0.1 3"),
  DASH_DOT("1.2", "7 2.5 1.2 2.5"),
  OLD("0.9", "2.5 2"),
  SOUND("6", ""),
  WEAK("6", "9 3"),
  SEPARATED("6", "3 3"),
  MISSING("3", "0.1 6");

  private final String width;
  private final String dashes;

  Pen(String width, String dashes) {
    this.width = width;
    this.dashes = dashes;
  }

  String width() {
    return width;
  }

  /** Whether the dashes are dots. */
  boolean round() {
    return dashes.startsWith("0.1");
  }

  /** Empty for an unbroken line. */
  String dashes() {
    return dashes;
  }
}
