package hornbook.record;

import hornbook.assessment.tree.FileText;

/** Text from outside, made safe to show: nothing in it steers a terminal or turns a line round. */
public final class Printable {
  private Printable() {}

  /** The text with whatever cannot be shown written as its code; null stays null. */
  public static String of(String text) {
    return text == null ? null : shown(text);
  }

  private static String shown(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              if (FileText.printable(point)) {
                shown.appendCodePoint(point);
              } else {
                shown.append(String.format("\\u%04x", point));
              }
            });
    return shown.toString();
  }

  /** The text on one line: breaks and tabs are spaces, and nothing is left at its ends. */
  public static String line(String text) {
    return text == null ? null : shown(text.strip().replaceAll("\\s+", " "));
  }
}
