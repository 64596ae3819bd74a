package hornbook.report.page;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines no wider than a page; a word too long for a line is broken too. */
public final class LineWrap {
  private LineWrap() {}

  /** Columns a text keeps, however far in it begins. */
  private static final int LEAST = 12;

  private static final String LEFT = "    ";

  /**
   * The lines of a text.
   *
   * @param first what the first line begins with
   * @param rest what the following lines begin with, as wide as {@code first} or narrower; where it
   *     leaves no room for words, they begin further left
   */
  public static List<String> lines(String text, int width, String first, String following) {
    boolean crowded = following.length() > LEFT.length() && columns(following) + LEAST > width;
    String rest = crowded ? LEFT : following;
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    int bare = first.length();
    for (String word : text.split(" ")) {
      String left = word;
      boolean fits = columns(line) + columns(left) + (line.length() > bare ? 1 : 0) <= width;
      if (!fits && line.length() > bare) {
        lines.add(line.toString());
        line = new StringBuilder(rest);
        bare = rest.length();
      }
      if (crowded && lines.isEmpty() && columns(line) + columns(left) > width) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(rest);
        bare = rest.length();
      }
      while (!left.isEmpty() && columns(line) + columns(left) > width) {
        int cut = left.offsetByCodePoints(0, Math.max(1, width - columns(line)));
        lines.add(line + left.substring(0, cut));
        left = left.substring(cut);
        line = new StringBuilder(rest);
        bare = rest.length();
      }
      line.append(line.length() > bare ? " " : "").append(left);
    }
    lines.add(line.toString());
    return lines;
  }

  private static int columns(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }
}
