package hornbook.study.exercise;

/** When to come again as it is written: {@code 42 days}, {@code 6 weeks}, {@code 42}. */
public final class DaysUntilVisit {
  /** What may be written. */
  public static final String ALLOWED = "1 to 365 days, such as 42 days or 6 weeks";

  private static final double LEAST = 1;
  private static final double MOST = 365;

  private DaysUntilVisit() {}

  /** Days until the next visit; null where that is not what was written. */
  public static Double of(String text) {
    String number = text.replaceFirst("\\s*(days?|weeks?)$", "");
    double each = text.matches(".*weeks?") ? 7 : 1;
    if (number.matches("\\d{1,3}(\\.\\d)?")) {
      double days = Double.parseDouble(number) * each;
      if (days >= LEAST && days <= MOST) {
        return days;
      }
    }
    return null;
  }
}
