package hornbook.report.drawing;

import hornbook.foot.GrowingOut;
import hornbook.foot.GrowthRates;
import hornbook.report.drawing.Canvas.Anchor;
import hornbook.report.words.HorseAndDay;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * How the top of each defect, and of each crack from the coronary band, grows down to the ground:
 * days to the right, height of its top upwards. The wedge lies between fast and slow growth, the
 * line in it is the mean.
 */
final class GrowthCalendar {
  private static final double WIDTH = 250;
  private static final double HEIGHT = 90;
  private static final int MOST_MONTHS = 14;
  private static final int DAYS_IN_A_WEEK = 7;
  private static final double LABEL = 8.5;

  private final DrawnFoot subject;
  private final List<Regrowth> defects;
  private final Regrowth.Found found;
  private final Canvas canvas;
  private final double days;
  private final double tallest;

  private GrowthCalendar(DrawnFoot subject, Regrowth.Found found) {
    this.subject = subject;
    this.defects =
        found.known().stream()
            .sorted(Comparator.comparingDouble(Regrowth::height).reversed())
            .toList();
    this.found = found;
    this.canvas = new Canvas(subject.id(Picture.GROWTH));
    this.days = defects.stream().mapToDouble(one -> one.ground().slow()).max().orElse(0);
    this.tallest = defects.stream().mapToDouble(Regrowth::height).max().orElse(0);
  }

  /** None, and not a word, where there is nothing to grow out. */
  static Drawing of(DrawnFoot subject) {
    Regrowth.Found found = Regrowth.of(subject);
    String title = "When it has grown out: " + subject.name();
    return found.known().isEmpty()
        ? Drawing.none(Picture.GROWTH, title, found.unknown())
        : new GrowthCalendar(subject, found).drawn(title);
  }

  private Drawing drawn(String title) {
    axes();
    defects.forEach(this::wedge);
    labels();
    exits();
    visits();
    GrowthRates rates = subject.readings().limits().growth();
    String told = String.join("; ", found.known().stream().map(one -> one.told(subject)).toList());
    String growth =
        "Growth a month: fast "
            + subject.mm(rates.fast())
            + ", mean "
            + subject.mm(rates.mean())
            + ", slow "
            + subject.mm(rates.slow());
    return canvas.drawing(
        Picture.GROWTH, title, told + ". " + growth + ".", key(growth), found.unknown());
  }

  private DrawnPoint at(double day, double height) {
    return new DrawnPoint(day / days * WIDTH, height / tallest * HEIGHT);
  }

  private void wedge(Regrowth one) {
    GrowingOut out = one.ground();
    DrawnPoint top = at(0, one.height());
    canvas.area(Pen.LINE, one.fill(), List.of(top, at(out.fast(), 0), at(out.slow(), 0)));
    canvas.line(Pen.THIN, top, at(out.mean(), 0));
  }

  /** From the tallest down, none over another. */
  private void labels() {
    double lowest = Double.POSITIVE_INFINITY;
    for (Regrowth one : defects) {
      DrawnPoint top = at(0, one.height());
      lowest = Math.min(top.y() - 2, lowest - LABEL);
      canvas.words(
          one.name() + ": " + subject.mm(one.height()),
          new DrawnPoint(top.x() - 3, lowest),
          Anchor.END);
    }
  }

  private void axes() {
    canvas.line(Pen.LINE, at(0, tallest), at(0, 0), at(days, 0));
    LocalDate date = subject.date();
    if (date == null) {
      weeks();
      return;
    }
    canvas.words("from " + HorseAndDay.spoken(date), at(0, 0).moved(0, -27), Anchor.START);
    long months = ChronoUnit.MONTHS.between(date, date.plusDays((long) Math.ceil(days))) + 1;
    int step = (int) Math.max(1, Math.ceil(months / (double) MOST_MONTHS));
    LocalDate first = date.withDayOfMonth(1).plusMonths(step);
    for (LocalDate month = first; ; month = month.plusMonths(step)) {
      double day = ChronoUnit.DAYS.between(date, month);
      if (day > days) {
        break;
      }
      tick(day);
      boolean year = month == first || month.getMonth() == Month.JANUARY;
      canvas.words(month(month), at(day, 0).moved(0, -10), Anchor.MIDDLE, 6, false);
      if (year) {
        canvas.words(Integer.toString(month.getYear()), at(day, 0).moved(0, -18), Anchor.MIDDLE);
      }
    }
  }

  private static String month(LocalDate month) {
    String name = month.getMonth().name();
    return name.charAt(0) + name.substring(1, 3).toLowerCase(Locale.ROOT);
  }

  private void weeks() {
    double weeks = days / DAYS_IN_A_WEEK;
    double step = Math.max(1, Math.ceil(weeks / MOST_MONTHS));
    for (double week = 0; week <= weeks; week += step) {
      tick(week * DAYS_IN_A_WEEK);
      canvas.words(
          Long.toString(Math.round(week)),
          at(week * DAYS_IN_A_WEEK, 0).moved(0, -10),
          Anchor.MIDDLE);
    }
    canvas.words("weeks from this visit", at(days / 2, 0).moved(0, -19), Anchor.MIDDLE);
  }

  private void tick(double day) {
    canvas.line(Pen.THIN, at(day, 0), at(day, 0).moved(0, -3));
  }

  private void exits() {
    double exit = exit();
    if (exit < tallest) {
      canvas.line(Pen.DASHED, at(0, exit), at(days, exit));
      canvas.words("nail exits " + subject.mm(exit), at(days, exit).moved(3, -2), Anchor.START);
    }
  }

  private double exit() {
    return subject.worked() && !subject.plan().nails().isEmpty()
        ? subject.plan().nails().get(0).exit().value()
        : subject.readings().limits().nailExitHeight();
  }

  /** The visits of the sheet until all has grown out. */
  private void visits() {
    if (!subject.worked()) {
      return;
    }
    double interval = subject.plan().interval().value();
    List<DrawnPoint> tops = new ArrayList<>();
    for (double day = interval; day <= days; day += interval) {
      DrawnPoint top = at(day, tallest);
      canvas.line(Pen.OLD, at(day, 0), top);
      tops.add(top);
    }
    if (!tops.isEmpty()) {
      canvas.words("next visit", tops.get(0).moved(0, 3), Anchor.MIDDLE);
    }
  }

  private String cracks() {
    boolean any = defects.stream().anyMatch(one -> one.name().startsWith("crack"));
    return any
        ? " A crack from the coronary band begins at the height of the wall it is in. It has grown"
            + " out when that wall has been renewed, if the new horn comes down whole."
        : "";
  }

  private String key(String growth) {
    String visits =
        subject.worked() ? " Short dashes: visits, if all follow at the same interval." : "";
    return "Each wedge begins at the height of the top of a defect today and ends on the ground."
        + " The near edge is fast growth and the far edge slow growth; the line in it is mean"
        + " growth. Numbers as in the list of stretches."
        + cracks()
        + " "
        + growth
        + "."
        + visits;
  }
}
