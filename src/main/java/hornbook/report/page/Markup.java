package hornbook.report.page;

/** Writes HTML and SVG; whatever came from outside is escaped here and nowhere else. */
public final class Markup {
  private final StringBuilder out = new StringBuilder();

  /** Opens an element; attributes come as name, value, name, value. */
  public Markup open(String element, Object... attributes) {
    begin(element, attributes);
    out.append('>');
    return this;
  }

  /** An element that holds nothing. */
  public Markup empty(String element, Object... attributes) {
    begin(element, attributes);
    out.append("/>");
    return this;
  }

  private void begin(String element, Object... attributes) {
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      out.append(escaped(attributes[i + 1].toString())).append('"');
    }
  }

  public Markup close(String element) {
    out.append("</").append(element).append('>');
    return this;
  }

  public Markup text(String text) {
    out.append(escaped(text));
    return this;
  }

  /** A whole element with nothing but text in it. */
  public Markup element(String element, String text, Object... attributes) {
    return open(element, attributes).text(text).close(element);
  }

  public Markup line() {
    out.append('\n');
    return this;
  }

  /** Markup that is our own, as it stands. */
  public Markup raw(String markup) {
    out.append(markup);
    return this;
  }

  public static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
