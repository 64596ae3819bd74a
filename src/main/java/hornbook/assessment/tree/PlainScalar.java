package hornbook.assessment.tree;

import hornbook.assessment.tree.LocatedValue.Token;

/**
 * What a YAML value without quotes is: the core schema of YAML 1.2, chapter 10.3, without its octal
 * and hexadecimal numbers, its infinities and its not-a-number, which no measure is.
 */
public final class PlainScalar {
  private PlainScalar() {}

  public static Token token(String text) {
    return switch (text) {
      case "", "~", "null", "Null", "NULL" -> Token.NOTHING;
      case "true", "True", "TRUE", "false", "False", "FALSE" -> Token.FLAG;
      default -> number(text) ? Token.NUMBER : Token.TEXT;
    };
  }

  private static boolean number(String text) {
    int at = sign(text, 0);
    int whole = digits(text, at);
    int part = whole;
    if (whole < text.length() && text.charAt(whole) == '.') {
      part = digits(text, whole + 1);
    }
    boolean none = whole == at && part <= whole + 1;
    if (none || part == text.length()) {
      return !none;
    }
    if (text.charAt(part) != 'e' && text.charAt(part) != 'E') {
      return false;
    }
    int power = sign(text, part + 1);
    return power < text.length() && digits(text, power) == text.length();
  }

  private static int sign(String text, int at) {
    boolean signed = at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+');
    return signed ? at + 1 : at;
  }

  private static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at;
  }
}
