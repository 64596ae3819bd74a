package hornbook.report.advice;

import hornbook.report.page.LineWrap;
import hornbook.report.page.Section.Kind;
import hornbook.report.page.TerminalStyle;
import java.util.ArrayList;
import java.util.List;

/** One part of a brief: a heading with a text that runs on, in ever shorter wordings. */
final class BriefPart {
  private final Kind kind;
  private final String heading;
  private final String[] wordings;
  private final int[] heights;
  private int at;

  /**
   * @param wordings the longest first
   */
  BriefPart(Kind kind, String heading, String... wordings) {
    this.kind = kind;
    this.heading = heading;
    this.wordings = wordings;
    this.heights = new int[wordings.length];
  }

  /** Takes the next shorter wording; false where there is none. */
  boolean shorten() {
    boolean shorter = at + 1 < wordings.length;
    at += shorter ? 1 : 0;
    return shorter;
  }

  /** How many lines it takes now, at a width that is always the same. */
  int height(int width) {
    if (heights[at] == 0) {
      heights[at] = lines(width, TerminalStyle.NONE).size();
    }
    return heights[at];
  }

  List<String> lines(int width, TerminalStyle paint) {
    String text = wordings[at].isEmpty() ? heading : heading + " " + wordings[at];
    List<String> lines = new ArrayList<>();
    for (String line : LineWrap.lines(text, width, "", "  ")) {
      boolean headed = lines.isEmpty() && line.startsWith(heading);
      lines.add(headed ? paint.heading(kind, heading) + line.substring(heading.length()) : line);
    }
    return lines;
  }
}
