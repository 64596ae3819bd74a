package hornbook.report.drawing;

import hornbook.foot.number.Unknown;
import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;
import hornbook.report.drawing.Canvas.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The foot from the side, toe to the left, one unit to the millimetre: as it was measured, or with
 * a job done on it and the old foot behind it.
 */
final class SideView {
  private static final double AXIS = 42;
  private static final double ARC = 22;
  private static final double OFF = 4;
  private static final double ROW = 13;
  private static final double FIRST = 5;
  private static final double BELOW = 8;
  private static final double LABELS = 46;
  private static final double DEPTH_LABEL = 30;

  private final DrawnFoot subject;
  private final boolean after;
  private final AddedMaterial build;
  private final SideProfile profile;
  private final SideShape shape;
  private final Canvas canvas;
  private final List<String> leftOut = new ArrayList<>();
  private final List<String> said = new ArrayList<>();

  private SideView(DrawnFoot subject, boolean after) {
    this.subject = subject;
    this.after = after;
    this.build = after ? subject.build() : AddedMaterial.NOTHING;
    SideProfile before = subject.readings().profile();
    this.profile = before.with(build);
    this.shape = SideShape.of(before, build);
    this.canvas = new Canvas(subject.id(Picture.SIDE) + (after ? "-after" : ""));
  }

  static Drawing before(DrawnFoot subject) {
    return new SideView(subject, false).drawn();
  }

  /** With the job done. */
  static Drawing after(DrawnFoot subject) {
    return new SideView(subject, true).drawn();
  }

  private Drawing drawn() {
    if (subject.worked()) {
      sameFrame();
    }
    if (after) {
      added();
    }
    boolean walls = walls();
    axis();
    onTheGround();
    String title =
        (after ? "After the job, from the side: " : "As measured, from the side: ")
            + subject.name();
    if (!walls) {
      return Drawing.none(Picture.SIDE, title, leftOut);
    }
    ScaleBar.draw(canvas, subject.amounts());
    String description = String.join("; ", said) + ". Toe to the left.";
    return canvas.drawing(Picture.SIDE, title, description, key(), leftOut);
  }

  /** Before and after come out at the same size. */
  private void sameFrame() {
    SideProfile measured = subject.readings().profile();
    for (AddedMaterial one : List.of(AddedMaterial.NOTHING, subject.build())) {
      SideShape seen = SideShape.of(measured, one);
      reach(seen.foremost(), -DEPTH_LABEL, -FIRST - 2 * ROW - 2);
      reach(seen.rearmost(), LABELS, 0);
      reach(seen.coronetHeel(), LABELS, 0);
      reach(seen.coronetToe().at(measured.pasternAngle(), AXIS), LABELS, Canvas.LETTERS);
    }
  }

  private void reach(DrawnPoint point, double right, double up) {
    if (point.known()) {
      canvas.reach(point.x() + right, point.y() + up);
    }
  }

  private void added() {
    depth(build.toeDepth() > 0 || build.heelDepth() > 0 ? Fill.ADDED : Fill.TAKEN_OFF);
    if (build.front() > 0) {
      double clear = subject.limit("hairline.most");
      double high = profile.toeLength() - (Unknown.is(clear) ? 0 : clear);
      DrawnPoint top = shape.toe().at(profile.toeAngle(), high);
      DrawnPoint out = shape.foremost().at(profile.toeAngle(), high);
      canvas.area(Pen.THIN, Fill.ADDED, List.of(shape.foremost(), out, top, shape.toe()));
      canvas.words("+" + subject.mm(build.front()), out.moved(-OFF, 1), Anchor.END);
      said.add(subject.mm(build.front()) + " laid on in front");
    }
    canvas.line(Pen.OLD, shape.oldToe(), shape.oldHeel());
    if (build.behind() > 0 && canvas.line(Pen.HEAVY, shape.heel(), shape.rearmost())) {
      said.add("bearing carried back " + subject.mm(build.behind()) + " behind the heel");
    }
  }

  /** Between the old ground and the new. */
  private void depth(Fill fill) {
    if (build.toeDepth() == 0 && build.heelDepth() == 0) {
      return;
    }
    boolean drawn =
        canvas.area(
            Pen.THIN, fill, List.of(shape.oldToe(), shape.oldHeel(), shape.heel(), shape.toe()));
    if (drawn) {
      said.add("depth at the toe " + subject.mm(build.toeDepth()));
      said.add("depth at the heel " + subject.mm(build.heelDepth()));
      label(build.heelDepth(), shape.rearmost().moved(OFF, -BELOW), Anchor.START);
      label(build.toeDepth(), shape.foremost().moved(-OFF, -BELOW), Anchor.END);
    }
  }

  private void label(double depth, DrawnPoint at, Anchor anchor) {
    if (depth != 0) {
      canvas.words((depth > 0 ? "+" : "") + subject.mm(depth), at, anchor);
    }
  }

  /** Whether there is a wall to be seen. */
  private boolean walls() {
    DrawnPoint toe = shape.toe();
    DrawnPoint heel = shape.heel();
    boolean front = canvas.line(Pen.HEAVY, toe, shape.coronetToe());
    if (front) {
      DrawnPoint middle = toe.between(shape.coronetToe());
      number("toe", profile.toeLength(), "mm", middle.moved(-OFF - build.front(), 4), Anchor.END);
    } else {
      missing("The toe wall", toeMeasures());
    }
    boolean behind = canvas.line(Pen.HEAVY, heel, shape.oldHeel(), shape.coronetHeel());
    if (behind) {
      number("heel", profile.heelLength(), "mm", shape.coronetHeel().moved(OFF, 2), Anchor.START);
      angle(heel, profile.heelAngle(), "heel angle");
    } else {
      missing("The heel wall", heelMeasures());
    }
    if (!canvas.line(Pen.LINE, shape.coronetToe(), shape.coronetHeel())) {
      leftOut.add("The coronary band is not drawn: toe or heel wall is not known.");
    }
    if (canvas.line(Pen.LINE, toe, heel)) {
      angle(toe, profile.toeAngle(), "toe angle");
    } else {
      leftOut.add("The ground surface is not drawn: bearing length was not measured.");
    }
    return front || behind;
  }

  private Map<String, Double> toeMeasures() {
    return Map.of("toe length", profile.toeLength(), "toe angle", profile.toeAngle());
  }

  private Map<String, Double> heelMeasures() {
    return Map.of(
        "heel length", profile.heelLength(),
        "heel angle", profile.heelAngle(),
        "bearing length", profile.bearingLength());
  }

  private void missing(String what, Map<String, Double> needed) {
    List<String> unknown =
        needed.keySet().stream().filter(name -> Unknown.is(needed.get(name))).sorted().toList();
    leftOut.add(what + " is not drawn; not measured: " + String.join(", ", unknown) + ".");
  }

  private void number(String what, double value, String unit, DrawnPoint at, Anchor anchor) {
    String text = subject.amounts().text(value, unit);
    canvas.words(what + " " + text, at, anchor);
    said.add(what + " length " + text);
  }

  private void angle(DrawnPoint corner, double angle, String name) {
    if (Unknown.is(angle)) {
      leftOut.add(capital(name) + " was not measured.");
      return;
    }
    List<DrawnPoint> arc = new ArrayList<>();
    canvas.line(Pen.THIN, corner, corner.moved(ARC, 0));
    for (int i = 0; i <= 12; i++) {
      arc.add(corner.at(angle * i / 12, ARC));
    }
    canvas.line(Pen.THIN, arc);
    canvas.words(subject.degrees(angle), corner.at(angle / 2, ARC + 2).moved(0, -2), Anchor.START);
    said.add(name + " " + subject.degrees(angle));
  }

  /** The line of the toe wall carried on, and that of the pastern, from the same point. */
  private void axis() {
    DrawnPoint coronet = shape.coronetToe();
    if (Unknown.is(profile.pasternAngle())) {
      leftOut.add("The hoof–pastern axis is not drawn: pastern angle was not measured.");
      return;
    }
    DrawnPoint pastern = coronet.at(profile.pasternAngle(), AXIS);
    if (canvas.line(Pen.LINE, coronet, pastern)) {
      canvas.line(Pen.DOTTED, coronet, coronet.at(profile.toeAngle(), AXIS));
      canvas.words(
          "pastern " + subject.degrees(profile.pasternAngle()), pastern.moved(3, -1), Anchor.START);
      said.add("pastern angle " + subject.degrees(profile.pasternAngle()));
      said.add("toe angle minus pastern angle " + subject.degrees(profile.hoofPasternDifference()));
    }
  }

  /** Breakover and bearing length, measured out below the ground. */
  private void onTheGround() {
    if (canvas.line(Pen.DASHED, shape.middle(), shape.middle().moved(0, -FIRST - ROW))) {
      span("breakover", shape.breakover(), shape.middle(), -FIRST - ROW, profile.breakover());
    } else {
      leftOut.add("Breakover is not drawn: toe to widest part was not measured.");
    }
    if (shape.rearmost().known()) {
      span(
          "bearing", shape.foremost(), shape.rearmost(), -FIRST - 2 * ROW, profile.bearingLength());
    }
  }

  private void span(String name, DrawnPoint from, DrawnPoint to, double down, double length) {
    DrawnPoint one = from.moved(0, down);
    DrawnPoint other = to.moved(0, down);
    canvas.line(Pen.THIN, from.moved(0, -1), one.moved(0, -2));
    canvas.line(Pen.THIN, to.moved(0, -1), other.moved(0, -2));
    canvas.line(Pen.THIN, one, other);
    String words = name + " " + subject.mm(length);
    boolean fits = Canvas.length(words, Canvas.LETTERS) < one.distance(other) - 2;
    canvas.words(
        words,
        fits ? one.between(other).moved(0, 1.5) : other.moved(OFF, 1.5),
        fits ? Anchor.MIDDLE : Anchor.START);
    said.add(name + " " + subject.mm(length));
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private String key() {
    String axis =
        Unknown.is(profile.pasternAngle())
            ? ""
            : " Dots carry on the line of the toe wall; the line from the coronary band is the"
                + " pastern, drawn by its angle: its length was not measured.";
    String job =
        after
            ? " Hatched: what the job adds or takes off. Short dashes: the ground surface as"
                + " measured. The shoe is not drawn."
                + (build.behind() > 0 ? " Heavy line behind the heel: the branch of the shoe." : "")
            : "";
    return "Toe to the left."
        + axis
        + " Breakover: from below the middle of the foot forward to"
        + " where the foot rolls over."
        + job;
  }
}
