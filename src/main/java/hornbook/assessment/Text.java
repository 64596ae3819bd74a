package hornbook.assessment;

import hornbook.assessment.Located.Scalar;

/** A short text on one line. */
public record Text() implements ScalarKind {
  static final int LONGEST = 200;

  @Override
  public Class<?> type() {
    return String.class;
  }

  @Override
  public Taken take(Scalar scalar) {
    String text = scalar.text().strip();
    if (!allPrintable(text) || text.codePointCount(0, text.length()) > LONGEST) {
      return refuse(scalar);
    }
    return new Taken.Value(text.isEmpty() ? null : text);
  }

  @Override
  public String allowed() {
    return "a text of up to " + LONGEST + " letters on one line";
  }

  @Override
  public String write(Object value) {
    return "\"" + ((String) value).replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  private static boolean allPrintable(String text) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (!printable(text.codePointAt(i))) {
        return false;
      }
    }
    return true;
  }

  /** Whether a code point can be shown in a line of text without upsetting the line. */
  static boolean printable(int point) {
    boolean turnsText = point >= 0x202a && point <= 0x202e || point >= 0x2066 && point <= 0x2069;
    boolean breaksLine = Character.isISOControl(point) || point == 0x2028 || point == 0x2029;
    boolean half = Character.getType(point) == Character.SURROGATE;
    return !turnsText && !breaksLine && !half && point != 0xfeff && (point & 0xfffe) != 0xfffe;
  }
}
