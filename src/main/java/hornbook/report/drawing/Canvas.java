package hornbook.report.drawing;

import hornbook.report.page.Markup;
import hornbook.report.words.Numbers;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A drawing while it is drawn, one unit to the millimetre unless its drawer says otherwise. What
 * rests on an unknown number is left out by itself. The frame grows with what is drawn.
 */
final class Canvas {
  static final double LETTERS = 7;

  /** Width of a letter as a share of its height, rather too wide than too narrow. */
  private static final double LETTER_WIDTH = 0.58;

  private static final double MARGIN = 3;

  private final String id;
  private final Markup drawn = new Markup();
  private final Set<Fill> fills = EnumSet.noneOf(Fill.class);
  private double left = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double bottom = Double.POSITIVE_INFINITY;
  private double top = Double.NEGATIVE_INFINITY;

  /**
   * @param id begins every id in the drawing
   */
  Canvas(String id) {
    this.id = id;
  }

  boolean line(Pen pen, DrawnPoint... points) {
    return line(pen, "none", List.of(points), false);
  }

  boolean line(Pen pen, List<DrawnPoint> points) {
    return line(pen, "none", points, false);
  }

  /** An area within a line. */
  boolean area(Pen pen, Fill fill, List<DrawnPoint> corners) {
    if (fill != null && known(corners)) {
      fills.add(fill);
    }
    return line(pen, fill == null ? "none" : "url(#" + fill.id(id) + ")", corners, true);
  }

  private boolean line(Pen pen, String fill, List<DrawnPoint> points, boolean closed) {
    if (!known(points)) {
      return false;
    }
    StringBuilder places = new StringBuilder();
    for (DrawnPoint point : points) {
      reach(point.x(), point.y());
      places.append(places.isEmpty() ? "" : " ");
      places.append(number(point.x())).append(',').append(number(-point.y()));
    }
    String element = closed ? "polygon" : "polyline";
    List<Object> attributes = new ArrayList<>();
    attributes.addAll(List.of("points", places, "fill", fill, "stroke", "currentColor"));
    attributes.addAll(List.of("stroke-width", pen.width()));
    if (!pen.dashes().isEmpty()) {
      attributes.addAll(List.of("stroke-dasharray", pen.dashes()));
      attributes.addAll(List.of("stroke-linecap", pen.round() ? "round" : "butt"));
    }
    drawn.empty(element, attributes.toArray());
    drawn.line();
    return true;
  }

  private static boolean known(List<DrawnPoint> points) {
    return !points.isEmpty() && points.stream().allMatch(DrawnPoint::known);
  }

  /** A ring, or a filled dot. */
  void dot(DrawnPoint at, double radius, boolean filled) {
    if (at.known()) {
      reach(at.x() - radius, at.y() - radius);
      reach(at.x() + radius, at.y() + radius);
      drawn.empty(
          "circle",
          "cx",
          number(at.x()),
          "cy",
          number(-at.y()),
          "r",
          number(radius),
          "fill",
          filled ? "currentColor" : "none",
          "stroke",
          "currentColor",
          "stroke-width",
          "1");
    }
  }

  /** Where words stand to a point. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** Words on one line. */
  void words(String words, DrawnPoint at, Anchor anchor) {
    words(words, at, anchor, LETTERS, false);
  }

  /** Words on one line, of a given height of letters. */
  void words(String words, DrawnPoint at, Anchor anchor, double letters, boolean bold) {
    if (!at.known()) {
      return;
    }
    double length = length(words, letters);
    double before =
        switch (anchor) {
          case START -> 0;
          case MIDDLE -> length / 2;
          case END -> length;
        };
    reach(at.x() - before, at.y() - letters * 0.3);
    reach(at.x() - before + length, at.y() + letters);
    drawn.element(
        "text",
        words,
        "x",
        number(at.x()),
        "y",
        number(-at.y()),
        "text-anchor",
        anchor.name().toLowerCase(java.util.Locale.ROOT),
        "font-size",
        number(letters),
        "font-weight",
        bold ? "bold" : "normal",
        "fill",
        "currentColor");
    drawn.line();
  }

  /** About how long words come out, rather too long than too short. */
  static double length(String words, double letters) {
    return words.length() * LETTER_WIDTH * letters;
  }

  /** The frame takes in a point. */
  void reach(double x, double y) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }

  double left() {
    return left;
  }

  double right() {
    return right;
  }

  double bottom() {
    return bottom;
  }

  boolean empty() {
    return left > right;
  }

  /** The drawing in both its forms. */
  Drawing drawing(
      Picture picture, String title, String description, String key, List<String> leftOut) {
    Frame frame =
        new Frame(
            Math.round(Math.floor(left - MARGIN)),
            Math.round(Math.floor(-top - MARGIN)),
            Math.round(Math.ceil(right + MARGIN)),
            Math.round(Math.ceil(-bottom + MARGIN)));
    String inPage = svg(title, description, frame, "");
    List<String> words = new ArrayList<>(List.of(title + ".", key));
    words.addAll(leftOut);
    Caption caption = Caption.under(frame, words);
    String alone = svg(title, description, caption.frame(), caption.svg()) + "\n";
    return new Drawing(picture, title, inPage, alone, key, leftOut);
  }

  private String svg(String title, String description, Frame frame, String caption) {
    Markup svg = new Markup();
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        frame.viewBox(),
        "width",
        frame.width() + "mm",
        "height",
        frame.height() + "mm",
        "role",
        "img",
        "aria-labelledby",
        id + "-title",
        "aria-describedby",
        id + "-desc",
        "font-family",
        "Sans, Trebuchet MS, Verdana, sans-serif");
    svg.line();
    svg.element("title", title, "id", id + "-title").line();
    svg.element("desc", description, "id", id + "-desc").line();
    if (!fills.isEmpty()) {
      svg.open("defs").line();
      for (Fill fill : fills) {
        fill.define(svg, id);
        svg.line();
      }
      svg.close("defs").line();
    }
    if (caption.isEmpty()) {
      return svg.raw(drawn.toString()).close("svg").toString();
    }
    svg.empty(
        "rect",
        "x",
        frame.left(),
        "y",
        frame.top(),
        "width",
        frame.width(),
        "height",
        frame.height(),
        "fill",
        "#ffffff");
    svg.line().open("g", "color", "#1d1a16").line();
    return svg.raw(drawn.toString()).raw(caption).close("g").line().close("svg").toString();
  }

  private static String number(double value) {
    return Numbers.rounded(value, 2);
  }
}
