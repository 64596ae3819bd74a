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
    int taken = columns(first);
    for (String word : text.split(" ")) {
      String left = word;
      int wide = columns(left);
      if (line.length() > bare && taken + wide + 1 > width) {
        lines.add(line.toString());
        line = new StringBuilder(rest);
        bare = rest.length();
        taken = columns(rest);
      }
      if (crowded && lines.isEmpty() && taken + wide > width) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(rest);
        bare = rest.length();
        taken = columns(rest);
      }
      while (!left.isEmpty() && taken + wide > width) {
        int cut = left.offsetByCodePoints(0, Math.max(1, width - taken));
        lines.add(line + left.substring(0, cut));
        left = left.substring(cut);
        wide = columns(left);
        line = new StringBuilder(rest);
        bare = rest.length();
        taken = columns(rest);
      }
      if (line.length() > bare) {
        line.append(' ');
        taken++;
      }
      line.append(left);
      taken += wide;
    }
    lines.add(line.toString());
    return lines;
  }

  private static int columns(String text) {
    return text.codePointCount(0, text.length());
  }
}
