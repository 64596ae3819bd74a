package hornbook.report.drawing;

/** The edges of a drawing in whole units, downwards as SVG counts them. */
record Frame(long left, long top, long right, long bottom) {
  long width() {
    return right - left;
  }

  long height() {
    return bottom - top;
  }

  String viewBox() {
    return left + " " + top + " " + width() + " " + height();
  }
}
