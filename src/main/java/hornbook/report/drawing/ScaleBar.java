package hornbook.report.drawing;

import hornbook.assessment.quantity.Unit;
import hornbook.report.drawing.Canvas.Anchor;
import hornbook.report.words.Amounts;

/** A length to measure a drawing by: five centimetres, or two inches. */
final class ScaleBar {
  private static final double MILLIMETRES = 50;
  private static final double INCHES = 2;
  private static final double BELOW = 14;

  private ScaleBar() {}

  static void draw(Canvas canvas, Amounts amounts) {
    boolean inches = amounts.amount(1, "mm").unit().equals("in");
    double length = inches ? Unit.INCH.toKept(INCHES) : MILLIMETRES;
    DrawnPoint left = new DrawnPoint(canvas.left() + 2, canvas.bottom() - BELOW);
    DrawnPoint right = left.moved(length, 0);
    canvas.line(Pen.HEAVY, left, right);
    canvas.line(Pen.THIN, left.moved(0, 2), left.moved(0, -2));
    canvas.line(Pen.THIN, right.moved(0, 2), right.moved(0, -2));
    canvas.words(amounts.text(length, "mm"), right.moved(3, -2), Anchor.START);
  }
}
