package hornbook.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The beginning and the end of a page of HTML, and the style sheets for it. */
public final class PageFrame {
  private static final String STYLE = "page.css";

  private PageFrame() {}

  /**
   * All of a page about a horse up to the beginning of its body.
   *
   * @param foot stands at the foot of every printed sheet, beside the number of the page
   */
  public static void begin(Markup page, String title, String foot) {
    begin(page, title, List.of(style(STYLE), printed(foot)));
  }

  /**
   * All of a page up to the beginning of its body.
   *
   * @param styles style sheets as {@link #style} gives them
   */
  public static void begin(Markup page, String title, List<String> styles) {
    page.raw("<!DOCTYPE html>\n").open("html", "lang", "en-GB").line();
    page.open("head").line();
    page.empty("meta", "charset", "utf-8").line();
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    page.element("title", title).line();
    for (String style : styles) {
      page.open("style").line().raw(style).close("style").line();
    }
    page.close("head").line().open("body").line();
  }

  public static void end(Markup page) {
    page.close("body").line().close("html").line();
  }

  /** The text of a style sheet that lies beside this class, or has a path from the root. */
  public static String style(String name) {
    try (InputStream css = PageFrame.class.getResourceAsStream(name)) {
      return new String(css.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The style sheet for what stands at the foot of every printed sheet. */
  public static String printed(String foot) {
    String face = " font: 8pt Sans, sans-serif; color: #555;";
    return "@page {\n  @bottom-left { content: \"Hornbook: "
        + quoted(foot)
        + "\";"
        + face
        + " }\n  @bottom-right { content: \"Page \" counter(page) \" of \" counter(pages);"
        + face
        + " }\n}\n";
  }

  /**
   * Inside a string of a style sheet; nothing in a name can end it. A space is written as the rest
   * are: after another it would be taken for its end.
   */
  public static String quoted(String text) {
    StringBuilder quoted = new StringBuilder();
    text.codePoints()
        .forEach(
            one -> {
              boolean plain = one < 128 && Character.isLetterOrDigit(one);
              if (plain) {
                quoted.appendCodePoint(one);
              } else {
                quoted.append('\\').append(String.format("%06x", one));
              }
            });
    return quoted.toString();
  }
}
