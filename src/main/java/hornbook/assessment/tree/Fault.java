package hornbook.assessment.tree;

/**
 * Something in a file that is not an assessment.
 *
 * @param file as the user named it, or {@code --set}
 * @param line from 1; for a setting, which of them
 * @param column from 1
 * @param path of the field, empty for the file as a whole
 * @param found what stands there
 * @param allowed what may stand there
 * @param nearest the nearest known word, or null
 */
public record Fault(
    String file, int line, int column, String path, String found, String allowed, String nearest) {
  private static final int LONGEST_QUOTE = 60;
  private static final int LONGEST_PATH = 120;

  public static Fault at(Place place, String path, String found, String allowed, String nearest) {
    return new Fault(place.file(), place.line(), place.column(), path, found, allowed, nearest);
  }

  public static Fault at(Place place, String path, String found, String allowed) {
    return at(place, path, found, allowed, null);
  }

  public Place place() {
    return new Place(file, line, column);
  }

  /** One line for people: where, what was found, what is allowed, the nearest known word. */
  public String message() {
    StringBuilder text = new StringBuilder(file);
    text.append(place().inSetting() ? " " : ":" + line + ":" + column + ": ");
    text.append(path.isEmpty() ? "" : shownPath() + ": ");
    text.append("found ").append(found).append("; allowed: ").append(allowed);
    return nearest == null ? text.toString() : text + "; nearest: " + nearest;
  }

  /** The path, safe to print: its keys come out of the file. */
  public String shownPath() {
    return printable(path, LONGEST_PATH);
  }

  /** Text out of a file, made safe to print: cut, quoted, and without control characters. */
  public static String quote(String text) {
    return '"' + printable(text, LONGEST_QUOTE) + '"';
  }

  private static String printable(String text, int longest) {
    StringBuilder shown = new StringBuilder();
    int[] points = text.codePoints().limit(longest + 1L).toArray();
    for (int i = 0; i < Math.min(longest, points.length); i++) {
      boolean safe = FileText.printable(points[i]);
      shown.append(safe ? Character.toString(points[i]) : String.format("\\u%04x", points[i]));
    }
    return shown.append(points.length > longest ? "..." : "").toString();
  }
}
