package hornbook.report.record;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.DateStart;
import biweekly.property.DurationProperty;
import biweekly.property.Summary;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import com.fasterxml.jackson.databind.JsonNode;
import hornbook.record.Digest;
import hornbook.record.Entry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The days an entry looks forward to, as a calendar (RFC 5545): whole days, no clock. */
public final class CalendarPaper {
  private static final String MAKER = "-//Hornbook//daybook//EN";

  private CalendarPaper() {}

  /** A day to be kept. */
  private record Ahead(String id, String what, LocalDate day, String why) {}

  /** Whether there is any day to put in. */
  public static boolean any(Entry entry) {
    return !days(entry).isEmpty();
  }

  public static String render(Entry entry) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(MAKER);
    String mark = Digest.digits(entry.digest()).substring(0, 32);
    for (Ahead ahead : days(entry)) {
      VEvent event = new VEvent();
      event.setUid(mark + "-" + ahead.id() + "@hornbook");
      if (entry.written() != null) {
        event.setDateTimeStamp(Date.from(entry.written()));
      }
      event.setDateStart(new DateStart(whole(ahead.day())));
      event.setDuration(new DurationProperty(Duration.builder().days(1).build()));
      event.setSummary(new Summary(ahead.what()));
      event.setDescription(ahead.why());
      calendar.addEvent(event);
    }
    return Biweekly.write(calendar).go();
  }

  private static ICalDate whole(LocalDate day) {
    DateTimeComponents parts =
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
    return new ICalDate(parts, false);
  }

  private static List<Ahead> days(Entry entry) {
    String horse = entry.horse() == null ? "A horse" : entry.horse();
    String from = "Hornbook, entry " + entry.number() + ".";
    Map<String, Ahead> days = new LinkedHashMap<>();
    for (String limb : entry.chose().keySet()) {
      JsonNode ahead = entry.ahead(limb);
      String foot = AdviceTree.limb(limb);
      add(
          days,
          "next",
          horse + ": farrier's next visit, by today",
          Entry.date(Entry.text(ahead, "nextVisit")),
          "The next visit is due by this day at the latest. " + from);
      add(
          days,
          "wrap-off-" + limb,
          horse + ": wrap off by today, " + foot,
          Entry.date(Entry.text(ahead, "wrapOff")),
          "The wrap never stays on beyond this day. " + from);
      add(
          days,
          "look-" + limb,
          horse + ": look again, " + foot,
          Entry.date(Entry.text(ahead, "lookAgain")),
          "See the horse walk and trot; feel the foot for heat. " + from);
    }
    return new ArrayList<>(days.values());
  }

  /** The earliest day where several feet have one. */
  private static void add(
      Map<String, Ahead> days, String id, String what, LocalDate day, String why) {
    if (day != null && (!days.containsKey(id) || day.isBefore(days.get(id).day()))) {
      days.put(id, new Ahead(id, what, day, why));
    }
  }
}
