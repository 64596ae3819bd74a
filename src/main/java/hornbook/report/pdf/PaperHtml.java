package hornbook.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A page made ready for paper: the style sheet for screens gives way to one for paper, and each
 * drawing gets its size on paper, and its title and description where the PDF library looks for
 * them.
 */
final class PaperHtml {
  /**
   * A drawing of one unit to the millimetre is printed at 36 to 100, unless it is wider than this.
   */
  private static final double SCALE = 0.36;

  private static final double MOST_WIDTH = 180;

  private PaperHtml() {}

  /**
   * Reads the page.
   *
   * @throws IllegalArgumentException when it is not well formed
   */
  static Document of(String html) {
    Document page = parsed(html);
    Element screen = (Element) page.getElementsByTagName("style").item(0);
    screen.setTextContent(style());
    Outline.of(page);
    NodeList drawings = page.getElementsByTagName("svg");
    for (int i = 0; i < drawings.getLength(); i++) {
      describe((Element) drawings.item(i));
      size((Element) drawings.item(i));
    }
    return page;
  }

  private static Document parsed(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new InputSource(new StringReader(html)));
    } catch (ParserConfigurationException | IOException | SAXException malformed) {
      throw new IllegalArgumentException("the page is not well formed", malformed);
    }
  }

  private static void describe(Element drawing) {
    StringBuilder words = new StringBuilder();
    for (String part : new String[] {"title", "desc"}) {
      NodeList found = drawing.getElementsByTagName(part);
      if (found.getLength() > 0) {
        words.append(words.isEmpty() ? "" : ". ").append(found.item(0).getTextContent());
      }
    }
    drawing.setAttribute("alt", words.toString());
  }

  private static void size(Element drawing) {
    String[] frame = drawing.getAttribute("viewBox").split(" ");
    double width = Double.parseDouble(frame[2]);
    double height = Double.parseDouble(frame[3]);
    double scale = Math.min(SCALE, MOST_WIDTH / width);
    String wide = "width: " + scale * width + "mm";
    drawing.setAttribute("style", wide + "; height: " + scale * height + "mm");
    if (drawing.getParentNode() instanceof Element figure) {
      figure.setAttribute("style", wide);
    }
  }

  private static String style() {
    try (InputStream css = PaperHtml.class.getResourceAsStream("paper.css")) {
      return new String(css.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
