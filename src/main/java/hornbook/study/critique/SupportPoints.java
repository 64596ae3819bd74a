package hornbook.study.critique;

import hornbook.rulebook.fact.Bearing;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.OtherView;
import java.util.List;
import java.util.Optional;

/** The supports added, and those left out. */
final class SupportPoints implements Critic.Part {
  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    List<String> model = key.model().supports();
    if (answer.supports() == null) {
      model.forEach(id -> to.add(left(key, id, PointVerdict.UNANSWERED)));
      return;
    }
    for (String id : answer.supports()) {
      Point point =
          Choice.point(About.SUPPORT, key, answer, key.judged(id), view(key, id), Optional.empty());
      to.add(model.contains(id) ? point.keyed() : point);
    }
    model.stream()
        .filter(id -> !answer.supports().contains(id))
        .forEach(id -> to.add(leftOut(key, id)));
  }

  /** Left out, which an author may do as well. */
  private static Point leftOut(FootKey key, String id) {
    OtherView view =
        key.views().stream().filter(one -> id.equals(one.without())).findFirst().orElse(null);
    PointVerdict verdict = view == null ? PointVerdict.MISSED : PointVerdict.DEFENSIBLE;
    return left(key, id, verdict).with(view);
  }

  private static OtherView view(FootKey key, String id) {
    return key.views().stream().filter(one -> id.equals(one.support())).findFirst().orElse(null);
  }

  private static Point left(FootKey key, String id, PointVerdict verdict) {
    return Point.of(About.SUPPORT, id, verdict, FootKey.reasons(key.judged(id), Bearing.FOR))
        .keyed();
  }
}
