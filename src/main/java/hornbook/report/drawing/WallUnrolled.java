package hornbook.report.drawing;

import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.CoronaryBand;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.NailBranch;
import hornbook.foot.wall.SideSurvey;
import hornbook.plan.sheet.Covered;
import hornbook.plan.sheet.PlannedNail;
import hornbook.report.drawing.Canvas.Anchor;
import hornbook.report.words.Numbers;
import hornbook.report.words.PlainWords;
import java.util.ArrayList;
import java.util.List;

/**
 * The outside of the wall laid flat, seen from in front, the toe in the middle, one unit to the
 * millimetre along the ground edge and up the wall.
 */
final class WallUnrolled {
  private static final double STEP = 4;
  private static final double EDGE = 7;
  private static final double TICK = 20;
  private static final double INCH = 25.4;
  private static final double NAIL = 2.4;

  private final DrawnFoot subject;
  private final Canvas canvas;
  private final CoronaryBand band;
  private final double edge;
  private final List<String> leftOut = new ArrayList<>();
  private final List<String> said = new ArrayList<>();

  private WallUnrolled(DrawnFoot subject) {
    this.subject = subject;
    this.canvas = new Canvas(subject.id(Picture.WALL));
    this.band = CoronaryBand.of(subject.readings().measures(), subject.readings().outline());
    double outlined =
        subject.readings().outline() == null
            ? Unknown.NUMBER
            : subject.readings().outline().edgeLength();
    this.edge =
        Regrowth.sides(subject).stream()
            .mapToDouble(SideSurvey::edge)
            .filter(Double::isFinite)
            .max()
            .orElse(outlined);
  }

  static Drawing of(DrawnFoot subject) {
    return new WallUnrolled(subject).drawn();
  }

  private Drawing drawn() {
    String title = "The wall unrolled: " + subject.name();
    if (Unknown.is(edge)) {
      leftOut.add("Not drawn: neither the wall was mapped nor bearing length and width measured.");
      return Drawing.none(Picture.WALL, title, leftOut);
    }
    stretches();
    covered();
    bands();
    nails();
    cracks();
    frame();
    String description = "The wall laid flat, toe in the middle. " + String.join("; ", said) + ".";
    return canvas.drawing(Picture.WALL, title, description, key(), leftOut);
  }

  /** To the right for the side that lies there when one stands before the foot. */
  private double x(Side side, double along) {
    Limb limb = subject.foot().limb();
    boolean left = limb == Limb.LEFT_FORE || limb == Limb.LEFT_HIND;
    return (side == Side.MEDIAL) == left ? -along : along;
  }

  private DrawnPoint point(Side side, double along, double height) {
    return new DrawnPoint(x(side, along), height);
  }

  private void stretches() {
    int number = 0;
    for (SideSurvey side : Regrowth.sides(subject)) {
      for (MappedPiece piece : side.pieces()) {
        number++;
        stretch(number, piece, side.side());
      }
    }
    if (subject.readings().wall() == null) {
      leftOut.add("The wall was not mapped: the state of its edge is not drawn.");
    } else if (subject.readings().wall().unmapped() > 0) {
      leftOut.add("Edge without a box below the ground line was not mapped.");
    }
  }

  private void stretch(int number, MappedPiece piece, Side side) {
    box(side, piece.from(), piece.to(), 0, -EDGE, WallFills.of(piece.group()), Pen.LINE);
    DrawnPoint middle = point(side, (piece.from() + piece.to()) / 2, -EDGE - 9);
    canvas.words(Integer.toString(number), middle, Anchor.MIDDLE, Canvas.LETTERS, true);
    String words =
        number
            + ", "
            + PlainWords.of(side.word())
            + " side "
            + subject.amounts().span(piece.from(), piece.to(), "mm")
            + ": "
            + PlainWords.of(piece.stretch().state().word());
    if (!piece.group().defect()) {
      said.add(words);
      return;
    }
    Double height = piece.stretch().height();
    if (height == null) {
      leftOut.add("Stretch " + number + " is drawn at the edge only: its height was not measured.");
      said.add(words + ", height not measured");
      return;
    }
    box(side, piece.from(), piece.to(), height, 0, WallFills.of(piece.group()), Pen.LINE);
    canvas.words(
        subject.mm(height),
        point(side, (piece.from() + piece.to()) / 2, height + 2),
        Anchor.MIDDLE);
    said.add(words + ", " + subject.mm(height) + " high");
  }

  private void box(Side side, double from, double to, double high, double low, Fill fill, Pen pen) {
    canvas.area(
        pen,
        fill,
        List.of(
            point(side, from, low),
            point(side, to, low),
            point(side, to, high),
            point(side, from, high)));
  }

  private void covered() {
    if (!subject.worked()) {
      return;
    }
    for (Covered one : subject.plan().covered()) {
      List<DrawnPoint> corners = new ArrayList<>();
      corners.add(point(one.side(), one.from(), 0));
      for (double along : along(one.from(), Math.min(one.to(), edge))) {
        corners.add(point(one.side(), along, Math.min(one.height(), clearance(along))));
      }
      corners.add(point(one.side(), Math.min(one.to(), edge), 0));
      if (canvas.area(Pen.DASH_DOT, Fill.COVERED, corners)) {
        said.add(
            "covered: "
                + PlainWords.of(one.side().word())
                + " side "
                + subject.amounts().span(one.from(), Math.min(one.to(), edge), "mm"));
      } else {
        leftOut.add("What is covered is not drawn in full: the height of the wall is not known.");
      }
    }
  }

  /** Height of the wall; a map that ends near the outlined heel is taken to reach it. */
  private double height(double along) {
    return band.known() ? band.above(along / edge * band.outline().edgeLength()) : Unknown.NUMBER;
  }

  /** How high the wall may be covered; as high as need be where that is not known. */
  private double clearance(double along) {
    return height(along) - subject.limit("hairline.most");
  }

  /** Places from one to the other, close enough for a smooth line. */
  private static List<Double> along(double from, double to) {
    List<Double> places = new ArrayList<>();
    int steps = Math.max(1, (int) Math.ceil((to - from) / STEP));
    for (int i = 0; i <= steps; i++) {
      places.add(from + (to - from) * i / steps);
    }
    return places;
  }

  private void bands() {
    if (!band.known()) {
      leftOut.add(
          "The coronary band is not drawn; it needs toe length, heel length, bearing length and"
              + " width.");
      return;
    }
    double clear = subject.limit("hairline.most");
    for (Side side : Side.values()) {
      List<DrawnPoint> coronet = new ArrayList<>();
      List<DrawnPoint> clearance = new ArrayList<>();
      for (double along : along(0, edge)) {
        coronet.add(point(side, along, height(along)));
        clearance.add(point(side, along, height(along) - clear));
      }
      canvas.line(Pen.HEAVY, coronet);
      canvas.line(Pen.DASHED, clearance);
      canvas.line(Pen.LINE, point(side, edge, 0), point(side, edge, height(edge)));
    }
    boolean clears = !Unknown.is(clear);
    canvas.words(
        "coronary band" + (clears ? "; dashes: " + subject.mm(clear) + " below it" : ""),
        new DrawnPoint(0, band.toe() + 4),
        Anchor.MIDDLE);
    said.add(
        "coronary band "
            + subject.mm(band.toe())
            + " high at the toe and "
            + subject.mm(band.heel())
            + " at the heels");
    if (clears) {
      said.add("dashed line " + subject.mm(clear) + " below it: cover the wall no higher");
    }
  }

  /** Where the nails of the sheet leave the wall; without a sheet, where nails could go. */
  private void nails() {
    if (subject.worked()) {
      for (PlannedNail nail : subject.plan().nails()) {
        DrawnPoint exit = point(nail.side(), nail.at().value(), nail.exit().value());
        canvas.line(Pen.THIN, point(nail.side(), nail.at().value(), 0), exit);
        canvas.dot(exit, NAIL, true);
      }
      if (!subject.plan().nails().isEmpty()) {
        said.add(
            Numbers.counted(subject.plan().nails().size(), "nail")
                + " leaving the wall "
                + subject.mm(subject.plan().nails().get(0).exit().value())
                + " up");
      }
      return;
    }
    double exit = subject.readings().limits().nailExitHeight();
    if (subject.readings().nails() == null) {
      return;
    }
    for (NailBranch branch :
        List.of(subject.readings().nails().medial(), subject.readings().nails().lateral())) {
      for (double at : branch.positions()) {
        canvas.line(Pen.THIN, point(branch.side(), at, 0), point(branch.side(), at, exit));
        canvas.dot(point(branch.side(), at, exit), NAIL, false);
      }
      said.add(
          Numbers.counted(branch.positions().size(), "place")
              + " for a nail on the "
              + PlainWords.of(branch.side().word())
              + " side");
    }
  }

  private void cracks() {
    Cracks.draw(subject, canvas, this::height, edge, this::x, leftOut, said);
  }

  private void frame() {
    DrawnPoint inner = point(Side.MEDIAL, edge, 0);
    DrawnPoint outer = point(Side.LATERAL, edge, 0);
    canvas.line(Pen.LINE, inner, outer);
    double ruler = -EDGE - 14;
    boolean inches = subject.amounts().amount(1, "mm").unit().equals("in");
    double tick = inches ? INCH : TICK;
    for (Side side : Side.values()) {
      ruler(side, ruler, tick);
      canvas.words(
          PlainWords.of(side.word()) + " heel", point(side, edge - 22, ruler - 22), Anchor.MIDDLE);
    }
    canvas.line(Pen.THIN, point(Side.MEDIAL, edge, ruler), point(Side.LATERAL, edge, ruler));
    canvas.words("toe", new DrawnPoint(0, ruler - 22), Anchor.MIDDLE);
  }

  /** Every second mark has its number. */
  private void ruler(Side side, double height, double tick) {
    for (int i = side == Side.MEDIAL ? 0 : 1; i * tick <= edge; i++) {
      double at = i * tick;
      canvas.line(Pen.THIN, point(side, at, height), point(side, at, height - 3));
      if (i % 2 == 0) {
        canvas.words(
            Numbers.rounded(subject.amounts().amount(at, "mm").value(), 0),
            point(side, at, height - 11),
            Anchor.MIDDLE);
      }
    }
  }

  private String key() {
    String nails =
        subject.worked()
            ? subject.plan().nails().isEmpty()
                ? ""
                : " Filled dots: where the nails leave the wall."
            : subject.readings().nails() == null ? "" : " Rings: where nails could leave the wall.";
    String covered =
        subject.worked() && !subject.plan().covered().isEmpty()
            ? " Upright lines in a dash-dotted frame: covered by the job."
            : "";
    return "Seen from in front, as if the wall were unrolled; numbers as in the list of stretches."
        + " Boxes below the ground line: the state of the edge. Plain is sound, dots are flared,"
        + " cracked or repaired, slanted lines separated or crumbling, crossed lines broken away or"
        + " resected. Above it: how high the defect goes. Between toe and heel the coronary band is"
        + " drawn from the two lengths, not measured."
        + nails
        + covered;
  }
}
