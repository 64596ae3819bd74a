package hornbook.report.drawing;

import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.foot.shape.EdgePoint;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.NailBranch;
import hornbook.foot.wall.SideSurvey;
import hornbook.foot.wall.WallGroup;
import hornbook.report.page.Markup;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Numbers;
import java.util.List;

/**
 * The ground edge of the wall seen from above, toe at the top, one unit to the millimetre. States
 * of the wall differ by the stroke and carry numbers that the legend takes up, so that nothing
 * hangs on colour.
 */
public final class FootDrawing {
  private static final double STEP = 2;
  private static final double MARGIN = 26;
  private static final double NUMBER_INSIDE = 13;
  private static final double NAIL = 4;

  private final FootMap map;
  private final GroundOutline outline;
  private final Markup svg = new Markup();

  private FootDrawing(FootMap map) {
    this.map = map;
    this.outline = map.outline();
  }

  /** The drawing as an SVG element, or an empty text where the outline is not known. */
  public static String svg(FootMap map, String id) {
    return map.outline() == null ? "" : new FootDrawing(map).drawn(id);
  }

  private String drawn(String id) {
    double half = outline.width() / 2 + MARGIN;
    double length = outline.bearingLength() + 2 * MARGIN;
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        numbers(-half, -MARGIN, 2 * half, length),
        "role",
        "img",
        "aria-labelledby",
        id + "-title");
    svg.element(
        "title",
        "Ground edge of the " + FieldNames.of(map.foot().limb()) + ", seen from above, toe up",
        "id",
        id + "-title");
    for (Side side : Side.values()) {
      stroke("unmapped", side, 0, outline.edgeLength());
    }
    int number = 0;
    for (SideSurvey side : map.sides()) {
      double scale = outline.edgeLength() / side.edge();
      for (MappedPiece piece : side.pieces()) {
        number++;
        piece(piece, side.side(), scale, number);
      }
    }
    nails();
    words(half);
    svg.close("svg");
    return svg.toString();
  }

  private void piece(MappedPiece piece, Side side, double scale, int number) {
    double from = Math.min(piece.from() * scale, outline.edgeLength());
    double to = Math.min(piece.to() * scale, outline.edgeLength());
    stroke(stroke(piece.group()), side, from, to);
    EdgePoint middle = outline.at((from + to) / 2);
    double inward =
        1 - NUMBER_INSIDE / Math.max(NUMBER_INSIDE, Math.hypot(middle.out(), centre(middle)));
    svg.element(
        "text",
        Integer.toString(number),
        "class",
        "number",
        "x",
        number(x(side, middle.out() * inward)),
        "y",
        number(outline.bearingLength() / 2 - centre(middle) * inward));
  }

  /** How far ahead of the middle of the foot a point lies. */
  private double centre(EdgePoint point) {
    return outline.bearingLength() / 2 - point.back();
  }

  private static String stroke(WallGroup group) {
    return switch (group) {
      case SOUND -> "sound";
      case WEAK -> "weak";
      case PARTED -> "parted";
      case MISSING -> "missing";
    };
  }

  /** A run of the edge of one side, as a line of short pieces. */
  private void stroke(String style, Side side, double from, double to) {
    StringBuilder points = new StringBuilder();
    int steps = Math.max(1, (int) Math.ceil((to - from) / STEP));
    for (int i = 0; i <= steps; i++) {
      EdgePoint point = outline.at(Math.min(outline.edgeLength(), from + (to - from) * i / steps));
      points.append(i == 0 ? "" : " ").append(number(x(side, point.out())));
      points.append(',').append(number(point.back()));
    }
    svg.empty("polyline", "class", style, "points", points);
  }

  private void nails() {
    if (map.nails() == null) {
      return;
    }
    for (NailBranch branch : List.of(map.nails().medial(), map.nails().lateral())) {
      List<Double> certain = branch.positions();
      List<Double> possible = branch.possiblePositions();
      if (possible.size() > certain.size()) {
        possible.forEach(at -> ring(branch.side(), at));
      }
      certain.forEach(at -> diamond(branch.side(), at));
    }
  }

  /** A place that may take a nail. */
  private void ring(Side side, double at) {
    EdgePoint point = outline.at(Math.min(at, outline.edgeLength()));
    String x = number(x(side, point.out()));
    svg.empty("circle", "cx", x, "cy", number(point.back()), "r", "2.5");
  }

  /** A place that takes a nail. */
  private void diamond(Side side, double at) {
    EdgePoint point = outline.at(Math.min(at, outline.edgeLength()));
    double x = x(side, point.out());
    double y = point.back();
    StringBuilder corners = new StringBuilder();
    for (double[] corner : new double[][] {{0, -NAIL}, {NAIL, 0}, {0, NAIL}, {-NAIL, 0}}) {
      corners.append(corners.isEmpty() ? "" : " ").append(number(x + corner[0]));
      corners.append(',').append(number(y + corner[1]));
    }
    svg.empty("polygon", "points", corners);
  }

  private void words(double half) {
    double inner = x(Side.MEDIAL, half - 4);
    svg.element("text", "toe", "class", "word", "x", "0", "y", number(-MARGIN / 2));
    sideWord("inner", inner);
    sideWord("outer", -inner);
    svg.element(
        "text", "heels", "class", "word", "x", "0", "y", number(outline.bearingLength() + 12));
  }

  private void sideWord(String word, double x) {
    String turned =
        "rotate("
            + (x < 0 ? -90 : 90)
            + " "
            + number(x)
            + " "
            + number(outline.toeToWidest())
            + ")";
    svg.element(
        "text",
        word,
        "class",
        "word",
        "x",
        number(x),
        "y",
        number(outline.toeToWidest()),
        "transform",
        turned);
  }

  /** Sideways on the page: seen from above, the inner side of a left foot lies to the right. */
  private double x(Side side, double out) {
    Limb limb = map.foot().limb();
    boolean left = limb == Limb.LEFT_FORE || limb == Limb.LEFT_HIND;
    return (side == Side.MEDIAL) == left ? out : -out;
  }

  private static String numbers(double... values) {
    StringBuilder all = new StringBuilder();
    for (double value : values) {
      all.append(all.isEmpty() ? "" : " ").append(number(value));
    }
    return all.toString();
  }

  private static String number(double value) {
    return Numbers.rounded(value, 1);
  }
}
