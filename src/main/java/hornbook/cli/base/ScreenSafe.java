package hornbook.cli.base;

import hornbook.assessment.tree.FileText;

/**
 * Words that came from outside, made safe for a screen: what would move the cursor, change colours
 * or turn the direction of writing is shown as its number.
 */
public final class ScreenSafe {
  private ScreenSafe() {}

  /** The text with all that is not printable shown by number; line ends stay. */
  public static String of(String text) {
    if (text.codePoints().allMatch(ScreenSafe::safe)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            point ->
                shown.append(
                    safe(point) ? Character.toString(point) : String.format("\\u%04x", point)));
    return shown.toString();
  }

  private static boolean safe(int point) {
    boolean turns = point == 0x200e || point == 0x200f || point == 0x061c;
    return point == '\n' || !turns && FileText.printable(point);
  }
}
