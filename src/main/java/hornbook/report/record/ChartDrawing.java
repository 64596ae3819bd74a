package hornbook.report.record;

import hornbook.report.page.Markup;
import hornbook.report.words.Numbers;
import java.util.List;
import java.util.Locale;

/**
 * A number over the visits as a drawing: a ring a visit, joined by a line; a dashed bar where the
 * forecast of the visit before had it.
 */
final class ChartDrawing {
  private static final int WIDTH = 320;
  private static final int HEIGHT = 170;
  private static final int LEFT = 34;
  private static final int RIGHT = 20;
  private static final int TOP = 14;
  private static final int BOTTOM = 34;
  private static final int MARKS = 5;

  private final RecordChart chart;
  private final double step;
  private final double most;
  private final double days;
  private final Markup svg = new Markup();

  private ChartDrawing(RecordChart chart) {
    this.chart = chart;
    double greatest = Math.max(1, chart.most());
    this.step = step(greatest);
    this.most = step * Math.ceil(greatest / step - 1e-9);
    List<RecordChart.Point> points = chart.points();
    this.days = Math.max(1, points.get(points.size() - 1).day());
  }

  static String svg(RecordChart chart) {
    return new ChartDrawing(chart).drawn();
  }

  private String drawn() {
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + WIDTH + " " + HEIGHT,
        "width",
        WIDTH,
        "height",
        HEIGHT,
        "font-family",
        "Sans, sans-serif",
        "font-size",
        7,
        "text-anchor",
        "middle",
        "fill",
        "currentColor",
        "role",
        "img");
    svg.element("title", chart.title() + " over the visits");
    svg.element("desc", told());
    scale();
    line();
    chart.points().forEach(this::point);
    return svg.close("svg").toString();
  }

  /** The same in a sentence. */
  private String told() {
    StringBuilder told = new StringBuilder();
    for (RecordChart.Point point : chart.points()) {
      told.append(point.when()).append(": ");
      told.append(point.measured() ? Numbers.rounded(point.value(), 1) : "not measured");
      told.append(point.measured() ? " " + chart.unit() : "");
      if (point.forecast()) {
        told.append(", forecast ").append(Numbers.rounded(point.low(), 1));
        told.append(" to ").append(Numbers.rounded(point.high(), 1));
      }
      told.append(". ");
    }
    return told.toString().strip();
  }

  /** The least of 1, 2 and 5, or of ten or a hundred times those, that needs few marks. */
  private static double step(double greatest) {
    double tens = 1;
    while (true) {
      for (double one : new double[] {1, 2, 5}) {
        if (greatest <= one * tens * MARKS) {
          return one * tens;
        }
      }
      tens *= 10;
    }
  }

  private void scale() {
    for (int i = 0; i * step <= most + step / 2; i++) {
      double value = i * step;
      String y = at(y(value));
      svg.empty(
          "line",
          "x1",
          LEFT,
          "y1",
          y,
          "x2",
          WIDTH - RIGHT,
          "y2",
          y,
          "stroke",
          "currentColor",
          "stroke-opacity",
          "0.25",
          "stroke-width",
          "0.6");
      svg.element("text", Numbers.rounded(value, 0), "x", LEFT - 13, "y", at(y(value) + 2.4));
    }
    svg.element("text", chart.unit(), "x", LEFT - 13, "y", 6);
  }

  private void line() {
    StringBuilder points = new StringBuilder();
    chart.points().stream()
        .filter(RecordChart.Point::measured)
        .forEach(
            one -> points.append(at(x(one))).append(',').append(at(y(one.value()))).append(' '));
    svg.empty(
        "polyline",
        "points",
        points.toString().strip(),
        "fill",
        "none",
        "stroke",
        "currentColor",
        "stroke-width",
        "1.6");
  }

  private void point(RecordChart.Point point) {
    String x = at(x(point));
    if (point.forecast()) {
      svg.empty(
          "line",
          "x1",
          x,
          "y1",
          at(y(point.low())),
          "x2",
          x,
          "y2",
          at(y(point.high())),
          "stroke",
          "currentColor",
          "stroke-width",
          "5",
          "stroke-dasharray",
          "2 2",
          "stroke-opacity",
          "0.55");
    }
    if (point.measured()) {
      svg.empty("circle", "cx", x, "cy", at(y(point.value())), "r", "3");
    }
    svg.element("text", point.when(), "x", x, "y", HEIGHT - BOTTOM + 14);
  }

  private double x(RecordChart.Point point) {
    double room = WIDTH - LEFT - RIGHT - 40.0;
    return LEFT + 20 + room * point.day() / days;
  }

  private double y(double value) {
    return HEIGHT - BOTTOM - (HEIGHT - BOTTOM - TOP) * value / most;
  }

  private static String at(double place) {
    return String.format(Locale.ROOT, "%.1f", place);
  }
}
