package hornbook.study.critique;

import hornbook.rulebook.RuleConclusion;
import hornbook.study.exercise.FootAnswer;
import java.util.List;

/** The warnings that belong to the foot and the work. */
final class CautionPart implements Critic.Part {
  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    List<String> model = key.model().cautions();
    if (answer.cautions() == null) {
      model.forEach(id -> to.add(left(key, id, PointVerdict.UNANSWERED)));
      return;
    }
    for (String id : answer.cautions()) {
      Point point = said(key, id);
      to.add(model.contains(id) ? point.keyed() : point);
    }
    model.stream()
        .filter(id -> !answer.cautions().contains(id))
        .forEach(id -> to.add(left(key, id, PointVerdict.MISSED)));
  }

  private static List<Evidence> given(FootKey key, String id) {
    return key.foot().cautions().stream()
        .filter(one -> one.id().equals(id))
        .map(Evidence::of)
        .toList();
  }

  private static Point left(FootKey key, String id, PointVerdict verdict) {
    return Point.of(About.CAUTION, id, verdict, given(key, id)).keyed();
  }

  private static Point said(FootKey key, String id) {
    List<Evidence> given = given(key, id);
    if (!given.isEmpty()) {
      return Point.of(About.CAUTION, id, PointVerdict.AGREED, given);
    }
    List<Evidence> nearest =
        key
            .wouldSay(one -> one instanceof RuleConclusion.Cautions warns && warns.id().equals(id))
            .stream()
            .limit(1)
            .map(one -> key.evidence(one.rule().id()))
            .toList();
    return Point.of(About.CAUTION, id, PointVerdict.UNFOUNDED, nearest);
  }
}
