package hornbook.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing read back from its SVG, as another program would see it. */
final class Seen {
  private final Document svg;

  Seen(String svg) throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    builder.setErrorHandler(null);
    this.svg = builder.parse(new InputSource(new StringReader(svg)));
  }

  List<Element> all(String name) {
    NodeList nodes = svg.getElementsByTagName(name);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add((Element) nodes.item(i));
    }
    return all;
  }

  /** The corners of every area filled with a pattern. */
  List<List<Vector2D>> filled(Fill fill) {
    return all("polygon").stream()
        .filter(one -> one.getAttribute("fill").endsWith(suffix(fill)))
        .map(Seen::points)
        .toList();
  }

  private static String suffix(Fill fill) {
    return "-" + fill.name().toLowerCase(java.util.Locale.ROOT) + ")";
  }

  /** The points of every open line drawn with a pen. */
  List<List<Vector2D>> lines(Pen pen) {
    return all("polyline").stream()
        .filter(
            one ->
                one.getAttribute("stroke-width").equals(pen.width())
                    && one.getAttribute("stroke-dasharray").equals(pen.dashes()))
        .map(Seen::points)
        .toList();
  }

  /** Points with y upwards. */
  static List<Vector2D> points(Element line) {
    List<Vector2D> points = new ArrayList<>();
    for (String point : line.getAttribute("points").split(" ")) {
      String[] parts = point.split(",");
      points.add(Vector2D.of(Double.parseDouble(parts[0]), 0 - Double.parseDouble(parts[1])));
    }
    return points;
  }

  List<String> words() {
    return all("text").stream().map(Element::getTextContent).toList();
  }

  /** Left, top, width, height. */
  double[] frame() {
    String[] parts = svg.getDocumentElement().getAttribute("viewBox").split(" ");
    assertThat(parts).hasSize(4);
    double[] frame = new double[4];
    for (int i = 0; i < 4; i++) {
      frame[i] = Double.parseDouble(parts[i]);
    }
    return frame;
  }
}
