package hornbook.report.drawing;

import hornbook.report.page.Markup;
import java.util.ArrayList;
import java.util.List;

/**
 * Words under a drawing that stands alone.
 *
 * @param frame the frame of the drawing, grown to hold them
 */
record Caption(Frame frame, String svg) {
  private static final double LETTERS = 6;
  private static final double LINE = 8;
  private static final long LEAST_WIDTH = 200;

  static Caption under(Frame drawing, List<String> words) {
    long width = Math.max(LEAST_WIDTH, drawing.width());
    List<String> lines = new ArrayList<>();
    words.forEach(one -> wrap(one, width - 6, lines));
    Markup svg = new Markup();
    double y = drawing.bottom() + LINE;
    for (String line : lines) {
      svg.element(
          "text",
          line,
          "x",
          drawing.left() + 3,
          "y",
          y,
          "font-size",
          LETTERS,
          "fill",
          "currentColor");
      svg.line();
      y += LINE;
    }
    Frame grown =
        new Frame(drawing.left(), drawing.top(), drawing.left() + width, Math.round(Math.ceil(y)));
    return new Caption(grown, svg.toString());
  }

  private static void wrap(String words, double width, List<String> lines) {
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && Canvas.length(longer, LETTERS) > width) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
  }
}
