package hornbook.report.words;

import hornbook.advice.Advice;
import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;

/** What every page and every drawing is known by: the horse and the day. */
public final class HorseAndDay {
  private HorseAndDay() {}

  /** {@code Tansy, 14 March 2026}. */
  public static String of(Advice advice) {
    String name = advice.assessment().horse().name();
    LocalDate date = advice.assessment().visit().date();
    return (name == null ? "A horse" : name) + (date == null ? "" : ", " + spoken(date));
  }

  /** {@code 14 March 2026}. */
  public static String spoken(LocalDate date) {
    String month = Month.of(date.getMonthValue()).name();
    String spelt = month.charAt(0) + month.substring(1).toLowerCase(Locale.ROOT);
    return date.getDayOfMonth() + " " + spelt + " " + date.getYear();
  }
}
