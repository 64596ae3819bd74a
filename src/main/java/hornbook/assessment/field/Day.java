package hornbook.assessment.field;

import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import java.time.DateTimeException;
import java.time.LocalDate;

/** A day of the calendar, written year-month-day. */
public record Day() implements ScalarKind {
  /** The shape of a day of this age, in the dialect of JSON Schema. */
  public static final String PATTERN = "^(19|20|21)[0-9]{2}-[0-9]{2}-[0-9]{2}$";

  @Override
  public Class<?> type() {
    return LocalDate.class;
  }

  @Override
  public Taken take(Scalar scalar) {
    LocalDate day = scalar.token() == Token.TEXT ? parse(scalar.text()) : null;
    boolean ofThisAge = day != null && day.getYear() >= 1900 && day.getYear() < 2200;
    return ofThisAge ? new Taken.Value(day) : refuse(scalar);
  }

  /** Without the calendar's own parser, which takes longer to start than all the rest. */
  private static LocalDate parse(String text) {
    boolean dashes = text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-';
    for (int i = 0; dashes && i < text.length(); i++) {
      boolean digit = text.charAt(i) >= '0' && text.charAt(i) <= '9';
      dashes = digit || i == 4 || i == 7;
    }
    if (!dashes) {
      return null;
    }
    int year = Integer.parseInt(text.substring(0, 4));
    int month = Integer.parseInt(text.substring(5, 7));
    int day = Integer.parseInt(text.substring(8));
    try {
      return LocalDate.of(year, month, day);
    } catch (DateTimeException noSuchDay) {
      return null;
    }
  }

  @Override
  public String allowed() {
    return "a day of the calendar, year-month-day, such as 2026-03-14";
  }

  @Override
  public String write(Object value) {
    return value.toString();
  }
}
