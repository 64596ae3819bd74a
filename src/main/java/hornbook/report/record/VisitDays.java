package hornbook.report.record;

import hornbook.record.FootVisit;
import hornbook.report.advice.PageHead;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** The days of visits in words. */
final class VisitDays {

  /** {@code 18 April 2026}. */
  String spoken(FootVisit visit) {
    return visit.visited() == null
        ? "a day not noted (entry " + visit.entry().number() + ")"
        : PageHead.spoken(visit.visited());
  }

  /** {@code 18 Apr 2026}. */
  String brief(FootVisit visit) {
    LocalDate date = visit.visited();
    if (date == null) {
      return "no day";
    }
    String month = date.getMonth().name();
    String brief = month.charAt(0) + month.substring(1, 3).toLowerCase(Locale.ROOT);
    return date.getDayOfMonth() + " " + brief + " " + date.getYear();
  }

  /** Days since the first visit; where days are not known, visits stand for them. */
  long since(FootVisit first, FootVisit visit, int number) {
    return first.visited() == null || visit.visited() == null
        ? number
        : ChronoUnit.DAYS.between(first.visited(), visit.visited());
  }
}
