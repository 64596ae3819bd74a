package hornbook.assessment.quantity;

import java.math.BigDecimal;

/**
 * A quantity as somebody wrote it: {@code 92 mm}, {@code 3 5/8 in}, {@code 3.5"}, {@code -2 deg},
 * {@code 92,5 mm}. A comma before three figures could part thousands, and is not read. The unit is
 * null where none was written.
 */
public record Quantity(double number, Unit unit) {
  private static final String GAP = "[ \\t\\n\\u00a0\\u2009\\u202f]";
  private static final String VULGAR = "\u215b\u00bc\u215c\u00bd\u215d\u00be\u215e";

  /** Reads a quantity; null when the text is none, or its unit is not known. */
  public static Quantity parse(String text) {
    Scan scan = new Scan(spaced(text).strip());
    double sign = scan.sign();
    Double number = scan.number();
    if (number == null) {
      return null;
    }
    String rest = scan.rest().strip();
    Unit unit = Unit.spelt(rest);
    boolean bare = rest.isEmpty();
    return unit == null && !bare ? null : new Quantity(sign * number, unit);
  }

  /** In the unit the records keep; a number without a unit counts as {@code bare}. */
  public double kept(Unit bare) {
    return (unit == null ? bare : unit).toKept(number) + 0.0;
  }

  /** The shortest way to write an amount kept by the records, in a unit: {@code 92 mm}. */
  public static String write(double kept, Unit unit) {
    double amount = unit.fromKept(kept);
    boolean whole = amount == Math.rint(amount) && Math.abs(amount) < 1e9;
    String number = whole ? Long.toString((long) amount) : Double.toString(amount);
    boolean powers = number.indexOf('E') >= 0;
    return (powers ? new BigDecimal(number).toPlainString() : number) + " " + unit.symbol();
  }

  /** A regular expression (the dialect of JSON Schema) for the quantities of one dimension. */
  public static String pattern(Dimension dimension) {
    String decimal = "([0-9]+(\\.[0-9]*)?|\\.[0-9]+|[0-9]+,[0-9]{1,2})";
    String fraction = "([0-9]+(" + GAP + "|-)+)?[0-9]+/0*[1-9][0-9]*";
    String vulgar = "([0-9]+" + GAP + "?)?[" + VULGAR + "]";
    StringBuilder units = new StringBuilder();
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension) {
        for (String spelling : unit.spellings()) {
          units.append(units.length() == 0 ? "" : "|").append(eitherCase(spelling));
        }
      }
    }
    String number = "(" + decimal + "|" + fraction + "|" + vulgar + ")";
    return "^" + GAP + "*[+-]?" + number + GAP + "*(" + units + ")?" + GAP + "*$";
  }

  /** With plain spaces for every kind of gap, such as the one that does not break a line. */
  private static String spaced(String text) {
    String spaced = text;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != ' ' && (Character.isWhitespace(c) || Character.isSpaceChar(c))) {
        spaced = spaced.replace(c, ' ');
      }
    }
    return spaced;
  }

  private static String eitherCase(String spelling) {
    StringBuilder pattern = new StringBuilder();
    for (char c : spelling.toCharArray()) {
      char small = Character.toLowerCase(c);
      char capital = Character.toUpperCase(c);
      pattern.append(small == capital ? String.valueOf(c) : "[" + small + capital + "]");
    }
    return pattern.toString();
  }

  /** Reads a number from the front of a text. */
  private static final class Scan {
    private final String text;
    private int at;

    Scan(String text) {
      this.text = text;
    }

    double sign() {
      if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
        return text.charAt(at++) == '-' ? -1 : 1;
      }
      return 1;
    }

    /** A decimal, a fraction, or a whole number and a fraction; null when there is none. */
    Double number() {
      String whole = digits();
      if (at < text.length() && text.charAt(at) == '/') {
        return over(whole);
      }
      if (at < text.length() && text.charAt(at) == '.') {
        at++;
        String part = digits();
        boolean none = whole.isEmpty() && part.isEmpty();
        return none ? null : Double.valueOf("0" + whole + "." + part + "0");
      }
      if (!whole.isEmpty() && at < text.length() && text.charAt(at) == ',') {
        at++;
        String part = digits();
        boolean decimals = part.length() == 1 || part.length() == 2;
        return decimals ? Double.valueOf(whole + "." + part) : null;
      }
      int afterWhole = at;
      if (!whole.isEmpty()) {
        skipGap();
        int fraction = at;
        String top = digits();
        if (at > fraction
            && at < text.length()
            && text.charAt(at) == '/'
            && fraction > afterWhole) {
          Double part = over(top);
          return part == null ? null : Double.valueOf(Double.parseDouble(whole) + part);
        }
        at = afterWhole;
      }
      Double eighths = vulgar();
      if (eighths != null) {
        return (whole.isEmpty() ? 0 : Double.parseDouble(whole)) + eighths;
      }
      return whole.isEmpty() ? null : Double.valueOf(whole);
    }

    String rest() {
      return text.substring(at);
    }

    private Double over(String top) {
      at++;
      String bottom = digits();
      boolean complete = !top.isEmpty() && !bottom.isEmpty() && Double.parseDouble(bottom) > 0;
      return complete ? Double.valueOf(Double.parseDouble(top) / Double.parseDouble(bottom)) : null;
    }

    private Double vulgar() {
      int start = at;
      boolean afterWhole = at > 0 && Character.isDigit(text.charAt(at - 1));
      if (afterWhole && at < text.length() && text.charAt(at) == ' ') {
        at++;
      }
      int eighth = at < text.length() ? VULGAR.indexOf(text.charAt(at)) : -1;
      if (eighth < 0) {
        at = start;
        return null;
      }
      at++;
      return (eighth + 1) / 8.0;
    }

    private String digits() {
      int start = at;
      while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
        at++;
      }
      return text.substring(start, at);
    }

    private void skipGap() {
      while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '-')) {
        at++;
      }
    }
  }
}
