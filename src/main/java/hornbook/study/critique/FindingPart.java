package hornbook.study.critique;

import hornbook.advice.FindingGiven;
import hornbook.rulebook.RuleConclusion;
import hornbook.study.exercise.FootAnswer;
import java.util.List;

/** What was found on the foot. */
final class FindingPart implements Critic.Part {
  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    List<String> model = key.model().findings();
    if (answer.findings() == null) {
      model.forEach(id -> to.add(left(key, id, PointVerdict.UNANSWERED)));
      return;
    }
    for (String id : answer.findings()) {
      Point point = said(key, id);
      to.add(model.contains(id) ? point.keyed() : point);
    }
    model.stream()
        .filter(id -> !answer.findings().contains(id))
        .forEach(id -> to.add(left(key, id, PointVerdict.MISSED)));
  }

  private static List<Evidence> made(FootKey key, String id) {
    return key.foot().findings().stream()
        .filter(one -> one.id().equals(id))
        .map((FindingGiven one) -> key.finding(one))
        .toList();
  }

  private static Point left(FootKey key, String id, PointVerdict verdict) {
    return Point.of(About.FINDING, id, verdict, made(key, id)).keyed();
  }

  private static Point said(FootKey key, String id) {
    List<Evidence> made = made(key, id);
    if (!made.isEmpty()) {
      return Point.of(About.FINDING, id, PointVerdict.AGREED, made);
    }
    List<Evidence> nearest =
        key
            .wouldSay(
                one -> one instanceof RuleConclusion.Finds finds && finds.finding().equals(id))
            .stream()
            .limit(1)
            .map(Evidence::silent)
            .toList();
    return Point.of(About.FINDING, id, PointVerdict.UNFOUNDED, nearest);
  }
}
