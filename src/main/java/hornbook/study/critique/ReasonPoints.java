package hornbook.study.critique;

import hornbook.study.exercise.FootAnswer;
import java.util.List;

/**
 * The rules given as reasons: whether they hold on this foot, and which of the model's are left
 * out.
 */
final class ReasonPoints implements Critic.Part {
  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    List<String> model = key.model().because();
    if (answer.because() == null) {
      model.forEach(rule -> to.add(point(key, rule, PointVerdict.UNANSWERED).keyed()));
      return;
    }
    for (String rule : answer.becauseRules()) {
      boolean fired = key.fired(rule);
      Point point = point(key, rule, fired ? PointVerdict.AGREED : PointVerdict.UNFOUNDED);
      to.add(model.contains(rule) ? point.keyed() : point);
    }
    model.stream()
        .filter(rule -> !answer.becauseRules().contains(rule))
        .forEach(rule -> to.add(point(key, rule, PointVerdict.MISSED).keyed()));
  }

  private static Point point(FootKey key, String rule, PointVerdict verdict) {
    return Point.of(About.REASON, rule, verdict, List.of(key.evidence(rule)));
  }
}
