package hornbook.study.critique;

import hornbook.advice.Question;
import hornbook.advice.condition.RuleState;
import hornbook.study.exercise.FootAnswer;
import java.util.List;

/** What the learner would still look at. */
final class QuestionPart implements Critic.Part {
  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    List<String> model = key.model().ask();
    if (answer.ask() == null) {
      model.forEach(path -> to.add(point(key, path, PointVerdict.UNANSWERED).keyed()));
      return;
    }
    for (String path : answer.ask()) {
      boolean open = open(key, path);
      Point point = point(key, path, open ? PointVerdict.AGREED : PointVerdict.UNFOUNDED);
      to.add(model.contains(path) ? point.keyed() : point);
    }
    model.stream()
        .filter(path -> !answer.ask().contains(path))
        .forEach(path -> to.add(point(key, path, PointVerdict.MISSED).keyed()));
  }

  private static boolean open(FootKey key, String path) {
    return key.foot().questions().stream().map(Question::field).anyMatch(path::equals);
  }

  /** The rules that the answer would settle, as far as they may still call the vet or choose. */
  private static Point point(FootKey key, String path, PointVerdict verdict) {
    List<Evidence> settled =
        key.wouldSay(outcome -> true).stream()
            .filter(state -> state.unseen().contains(path))
            .limit(3)
            .map((RuleState one) -> Evidence.silent(one))
            .toList();
    return Point.of(About.QUESTION, path, verdict, settled);
  }
}
