package hornbook.assessment.field;

import hornbook.assessment.tree.FileText;
import hornbook.assessment.tree.LocatedValue.Scalar;

/** A short text on one line. */
public record ShortText() implements ScalarKind {
  public static final int LONGEST = 200;

  /** What is not printable, as a class of characters in the dialect of JSON Schema. */
  public static final String UNPRINTABLE =
      "\\u0000-\\u001f\\u007f-\\u009f\\u2028-\\u202e\\u2066-\\u2069\\ufeff\\ufffe\\uffff";

  @Override
  public Class<?> type() {
    return String.class;
  }

  @Override
  public Taken take(Scalar scalar) {
    String text = scalar.text();
    if (!allPrintable(text) || text.codePointCount(0, text.length()) > LONGEST) {
      return refuse(scalar);
    }
    String stripped = text.strip();
    return new Taken.Value(stripped.isEmpty() ? null : stripped);
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
      if (!FileText.printable(text.codePointAt(i))) {
        return false;
      }
    }
    return true;
  }
}
