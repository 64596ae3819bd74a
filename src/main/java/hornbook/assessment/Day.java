package hornbook.assessment;

import hornbook.assessment.Located.Scalar;
import hornbook.assessment.Located.Token;
import java.time.DateTimeException;
import java.time.LocalDate;

/** A day of the calendar, written year-month-day. */
public record Day() implements ScalarKind {
  @Override
  public Class<?> type() {
    return LocalDate.class;
  }

  @Override
  public Taken take(Scalar scalar) {
    String text = scalar.text();
    boolean shaped = scalar.token() == Token.TEXT && text.length() == 10 && ofThisAge(text);
    if (!shaped) {
      return refuse(scalar);
    }
    try {
      return new Taken.Value(LocalDate.parse(text));
    } catch (DateTimeException noSuchDay) {
      return refuse(scalar);
    }
  }

  private static boolean ofThisAge(String text) {
    return text.startsWith("19") || text.startsWith("20") || text.startsWith("21");
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
