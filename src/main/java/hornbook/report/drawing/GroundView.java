package hornbook.report.drawing;

import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.foot.shape.EdgePoint;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.NailBranch;
import hornbook.foot.wall.SideSurvey;
import hornbook.foot.wall.WallGroup;
import hornbook.plan.sheet.PlannedClip;
import hornbook.plan.sheet.PlannedNail;
import hornbook.report.drawing.Canvas.Anchor;
import hornbook.report.words.PlainWords;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The ground edge of the wall seen from above, toe at the top, one unit to the millimetre. States
 * of the wall differ by the stroke and carry the numbers of the list of stretches.
 */
final class GroundView {
  private static final double STEP = 2;
  private static final double INSIDE = 22;
  private static final double NAIL = 2.6;
  private static final double INWARD = 8;
  private static final double OUTSIDE = 12;

  private final DrawnFoot subject;
  private final GroundOutline outline;
  private final Canvas canvas;
  private final List<String> said = new ArrayList<>();

  private GroundView(DrawnFoot subject) {
    this.subject = subject;
    this.outline = subject.readings().outline();
    this.canvas = new Canvas(subject.id(Picture.GROUND));
  }

  static Drawing of(DrawnFoot subject) {
    String title = "The ground edge, seen from above: " + subject.name();
    return subject.readings().outline() == null
        ? Drawing.none(
            Picture.GROUND, title, List.of("Not drawn: bearing length or width was not measured."))
        : new GroundView(subject).drawn(title);
  }

  private Drawing drawn(String title) {
    for (Side side : Side.values()) {
      stroke(Pen.LINE, side, 0, outline.edgeLength());
    }
    int number = 0;
    for (SideSurvey side : Regrowth.sides(subject)) {
      double scale = outline.edgeLength() / side.edge();
      for (MappedPiece piece : side.pieces()) {
        number++;
        piece(piece, side.side(), scale, number);
      }
    }
    if (subject.worked()) {
      planned();
    } else {
      possible();
    }
    words();
    String description =
        "Toe at the top"
            + (said.isEmpty() ? "" : "; " + String.join("; ", said))
            + ". Bearing length "
            + subject.mm(outline.bearingLength())
            + ", width "
            + subject.mm(outline.width())
            + ".";
    return canvas.drawing(Picture.GROUND, title, description, key(), leftOut());
  }

  private List<String> leftOut() {
    return subject.readings().wall() == null
        ? List.of("The wall was not mapped: only the outline is drawn.")
        : List.of();
  }

  private void piece(MappedPiece piece, Side side, double scale, int number) {
    double from = Math.min(piece.from() * scale, outline.edgeLength());
    double to = Math.min(piece.to() * scale, outline.edgeLength());
    stroke(pen(piece.group()), side, from, to);
    EdgePoint middle = outline.at((from + to) / 2);
    double ahead = outline.bearingLength() / 2 - middle.back();
    double inward = 1 - INSIDE / Math.max(INSIDE, Math.hypot(middle.out(), ahead));
    DrawnPoint inside =
        new DrawnPoint(
            x(side, middle.out() * inward),
            ahead * inward - outline.bearingLength() / 2 - Canvas.LETTERS / 3);
    canvas.words(Integer.toString(number), inside, Anchor.MIDDLE, Canvas.LETTERS, true);
    said.add(
        number
            + ", "
            + PlainWords.of(side.word())
            + " side "
            + subject.amounts().span(piece.from(), piece.to(), "mm")
            + ": "
            + PlainWords.of(piece.stretch().state().word()));
  }

  private static Pen pen(WallGroup group) {
    return switch (group) {
      case SOUND -> Pen.SOUND;
      case WEAK -> Pen.WEAK;
      case SEPARATED -> Pen.SEPARATED;
      case MISSING -> Pen.MISSING;
    };
  }

  /** A run of the edge of one side, as a line of short pieces. */
  private void stroke(Pen pen, Side side, double from, double to) {
    List<DrawnPoint> points = new ArrayList<>();
    int steps = Math.max(1, (int) Math.ceil((to - from) / STEP));
    for (int i = 0; i <= steps; i++) {
      points.add(point(side, from + (to - from) * i / steps));
    }
    canvas.line(pen, points);
  }

  private DrawnPoint point(Side side, double along) {
    EdgePoint point = outline.at(Math.min(along, outline.edgeLength()));
    return new DrawnPoint(x(side, point.out()), -point.back());
  }

  /** Sideways on the page: seen from above, the inner side of a left foot lies to the right. */
  private double x(Side side, double out) {
    Limb limb = subject.foot().limb();
    boolean left = limb == Limb.LEFT_FORE || limb == Limb.LEFT_HIND;
    return (side == Side.MEDIAL) == left ? out : -out;
  }

  private void possible() {
    if (subject.readings().nails() == null) {
      return;
    }
    for (NailBranch branch :
        List.of(subject.readings().nails().medial(), subject.readings().nails().lateral())) {
      List<Double> certain = branch.positions();
      List<Double> possible = branch.possiblePositions();
      if (possible.size() > certain.size()) {
        possible.forEach(at -> canvas.dot(beside(branch.side(), at, -INWARD), NAIL, false));
      }
      certain.forEach(at -> diamond(beside(branch.side(), at, -INWARD)));
    }
  }

  /** The nails and clips of the sheet, numbered from the toe back as in its table. */
  private void planned() {
    Map<Side, Integer> count = new EnumMap<>(Side.class);
    for (PlannedNail nail : subject.plan().nails()) {
      int number = count.merge(nail.side(), 1, Integer::sum);
      diamond(beside(nail.side(), nail.at().value(), -INWARD));
      label(nail.side(), nail.at().value(), "n" + number);
    }
    for (PlannedClip clip : subject.plan().clips()) {
      Side side = clip.side() == null ? Side.MEDIAL : clip.side();
      canvas.dot(beside(side, clip.at(), INWARD), NAIL, true);
      label(side, clip.at(), "clip");
    }
  }

  private void label(Side side, double along, String words) {
    DrawnPoint at = beside(side, along, OUTSIDE).moved(0, -Canvas.LETTERS / 3);
    canvas.words(words, at, Anchor.MIDDLE, 6, false);
  }

  /** So far outside the edge, or inside it below 0, in line with the middle of the foot. */
  private DrawnPoint beside(Side side, double along, double out) {
    DrawnPoint at = point(side, along);
    double middle = -outline.bearingLength() / 2;
    double far = Math.max(1, at.distance(new DrawnPoint(0, middle)));
    double stretched = 1 + out / far;
    return new DrawnPoint(at.x() * stretched, middle + (at.y() - middle) * stretched);
  }

  private void diamond(DrawnPoint at) {
    double r = NAIL * 1.4;
    canvas.area(
        Pen.LINE, null, List.of(at.moved(0, r), at.moved(r, 0), at.moved(0, -r), at.moved(-r, 0)));
  }

  private void words() {
    double half = outline.width() / 2;
    double widest = -outline.toeToWidest();
    canvas.words("toe", new DrawnPoint(0, OUTSIDE + 4), Anchor.MIDDLE);
    canvas.words("heels", new DrawnPoint(0, -outline.bearingLength() - OUTSIDE - 4), Anchor.MIDDLE);
    for (Side side : Side.values()) {
      boolean right = x(side, 1) > 0;
      canvas.words(
          PlainWords.of(side.word()),
          new DrawnPoint(x(side, half + OUTSIDE + 6), widest),
          right ? Anchor.START : Anchor.END);
    }
  }

  private String key() {
    String nails =
        subject.worked()
            ? (subject.plan().nails().isEmpty()
                    ? ""
                    : " Diamonds: the nails, numbered from the toe back on each side.")
                + (subject.plan().clips().isEmpty() ? "" : " Filled dots: clips.")
            : subject.readings().nails() == null
                ? ""
                : " Diamonds: places for nails. Rings: places that may take a nail.";
    return "Seen from above, toe at the top. Heavy line: sound. Long dashes: flared, cracked or"
        + " repaired. Short dashes: separated or crumbling. Dots: broken away or resected. Thin"
        + " line: not mapped."
        + nails
        + " The outline is drawn from the measures, not traced.";
  }
}
