package hornbook.study.critique;

import hornbook.study.exercise.FootAnswer;
import java.util.List;

/** When to come again: sooner than the job sheet is careful, later is not. */
final class VisitPart implements Critic.Part {
  /** Days either way that count as the same visit. */
  private static final double SAME = 7;

  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    Double days = key.model().nextVisit();
    if (days == null || !answers(key, answer)) {
      return;
    }
    String wanted = Long.toString(Math.round(days));
    if (answer.nextVisit() == null) {
      to.add(
          Point.of(About.NEXT_VISIT, wanted, PointVerdict.UNANSWERED, List.of()).wanting(wanted));
      return;
    }
    double said = answer.nextVisit();
    PointVerdict verdict =
        Math.abs(said - days) <= SAME
            ? PointVerdict.AGREED
            : said < days ? PointVerdict.DEFENSIBLE : PointVerdict.UNFOUNDED;
    String subject = Long.toString(Math.round(said));
    to.add(Point.of(About.NEXT_VISIT, subject, verdict, List.of()).wanting(wanted));
  }

  /** The interval is that of the first choice: of another technique nothing is said. */
  private static boolean answers(FootKey key, FootAnswer answer) {
    return key.model().technique().equals(answer.technique()) || answer.technique() == null;
  }
}
