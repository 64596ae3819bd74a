package hornbook.study.critique;

import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import hornbook.study.exercise.FootAnswer;
import java.util.List;
import java.util.Map;

/** What the learner rules out, and on what grounds. */
final class RuledOutPart implements Critic.Part {
  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    Map<String, List<String>> model = key.model().ruledOut();
    if (answer.ruledOut() == null) {
      model.keySet().forEach(id -> to.add(left(key, id, PointVerdict.UNANSWERED)));
      return;
    }
    answer
        .ruledOut()
        .forEach(
            (id, rules) -> {
              Point point = said(key.judged(id), rules);
              to.add(model.containsKey(id) ? point.keyed() : point);
            });
    model.keySet().stream()
        .filter(id -> !answer.ruledOut().containsKey(id))
        .forEach(id -> to.add(left(key, id, PointVerdict.MISSED)));
  }

  private static Point left(FootKey key, String id, PointVerdict verdict) {
    List<Evidence> bars = FootKey.reasons(key.judged(id), Bearing.RULES_OUT);
    return Point.of(About.RULED_OUT, id, verdict, bars).wanting(Verdict.RULED_OUT.word()).keyed();
  }

  private static Point said(OptionAdvice judged, List<String> rules) {
    List<Evidence> bars = FootKey.reasons(judged, Bearing.RULES_OUT);
    boolean holds = rules.isEmpty() || bars.stream().anyMatch(one -> rules.contains(one.rule()));
    PointVerdict verdict =
        switch (judged.verdict()) {
          case RULED_OUT -> holds ? PointVerdict.AGREED : PointVerdict.RIGHT_FOR_ANOTHER_REASON;
          case WITH_VET, NOT_INDICATED -> PointVerdict.DEFENSIBLE;
          case WORKABLE, FIRST_CHOICE -> PointVerdict.UNFOUNDED;
        };
    List<Evidence> evidence =
        bars.isEmpty()
            ? FootKey.reasons(judged, Bearing.NEEDS_VET, Bearing.AGAINST, Bearing.FOR)
            : bars;
    return Point.of(About.RULED_OUT, judged.id(), verdict, evidence)
        .wanting(judged.verdict().word());
  }
}
