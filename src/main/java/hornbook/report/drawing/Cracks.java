package hornbook.report.drawing;

import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.word.CrackPlace;
import hornbook.assessment.word.CrackStart;
import hornbook.foot.number.Unknown;
import hornbook.report.drawing.Canvas.Anchor;
import hornbook.report.words.PlainWords;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The cracks on the unrolled wall, in the middle of the part of the wall each was found in. */
final class Cracks {
  /** How far a crack whose length was not measured is drawn, mm. */
  private static final double STUB = 10;

  private static final int TEETH = 6;
  private static final double TOOTH = 1.6;

  /** Where along the drawing a place on the edge lies. */
  interface Across {
    double x(Side side, double along);
  }

  private Cracks() {}

  static void draw(
      DrawnFoot subject,
      Canvas canvas,
      DoubleUnaryOperator heightOfWall,
      double edge,
      Across across,
      List<String> leftOut,
      List<String> said) {
    if (subject.foot().cracks() == null) {
      leftOut.add("Cracks were not looked for.");
      return;
    }
    int number = 0;
    for (WallCrack crack : subject.foot().cracks()) {
      number++;
      boolean placed = crack.place() != null && crack.place() != CrackPlace.BAR;
      boolean sided = crack.side() != null || crack.place() == CrackPlace.TOE;
      double height = Unknown.NUMBER;
      double along = Unknown.NUMBER;
      if (placed && sided && crack.starts() != null) {
        along =
            crack.side() == null
                ? 0
                : edge * subject.readings().limits().nailing().regions().middle(crack.place());
        height = heightOfWall.applyAsDouble(along);
      }
      String name = "crack " + number;
      if (Unknown.is(height)) {
        leftOut.add(
            "Crack "
                + number
                + " is not drawn: its place or the height of the wall is not"
                + " known, or it is in the bar.");
        continue;
      }
      double x = across.x(crack.side() == null ? Side.MEDIAL : crack.side(), along);
      double low = crack.starts() == CrackStart.CORONET ? height - STUB : 0;
      double high = crack.starts() == CrackStart.GROUND ? STUB : height;
      canvas.line(Pen.LINE, zigzag(x, low, high));
      canvas.words(name, new DrawnPoint(x + 4, (low + high) / 2), Anchor.START);
      said.add(
          name
              + ", "
              + PlainWords.of(crack.place().word())
              + ", from the "
              + (crack.starts() == CrackStart.FULL
                  ? "coronary band to the ground"
                  : crack.starts() == CrackStart.CORONET ? "coronary band down" : "ground up"));
      if (crack.starts() != CrackStart.FULL) {
        leftOut.add(
            "The length of crack " + number + " was not measured: only its start is drawn.");
      }
    }
  }

  private static List<DrawnPoint> zigzag(double x, double low, double high) {
    List<DrawnPoint> points = new ArrayList<>();
    for (int i = 0; i <= TEETH; i++) {
      double side = i == 0 || i == TEETH ? 0 : i % 2 == 0 ? -TOOTH : TOOTH;
      points.add(new DrawnPoint(x + side, low + (high - low) * i / TEETH));
    }
    return points;
  }
}
