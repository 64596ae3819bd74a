package hornbook.report.pdf;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The outline a reader of PDF shows beside the page: one line for each second-level heading. */
final class Outline {
  private Outline() {}

  /** Puts it into the head of the page, where the PDF library looks for it. */
  static void of(Document page) {
    Element outline = page.createElement("bookmarks");
    NodeList headings = page.getElementsByTagName("h2");
    for (int i = 0; i < headings.getLength(); i++) {
      Element heading = (Element) headings.item(i);
      String id = id(heading);
      if (!id.isEmpty()) {
        Element line = page.createElement("bookmark");
        line.setAttribute("name", heading.getTextContent().strip());
        line.setAttribute("href", "#" + id);
        outline.appendChild(line);
      }
    }
    if (outline.hasChildNodes()) {
      page.getElementsByTagName("head").item(0).appendChild(outline);
    }
  }

  /** Its own id, or that of what it stands in. */
  private static String id(Element heading) {
    for (Node one = heading; one instanceof Element element; one = one.getParentNode()) {
      if (element.hasAttribute("id")) {
        return element.getAttribute("id");
      }
    }
    return "";
  }
}
