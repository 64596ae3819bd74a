package hornbook.study.marking;

import hornbook.study.critique.CaseKey;
import hornbook.study.critique.Critic;
import hornbook.study.critique.Critique;
import hornbook.study.critique.FootCritique;
import hornbook.study.critique.Point;
import hornbook.study.exercise.LearnerAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Marks answers by a scheme: a pure function of key, answer and scheme. The marks of a point never
 * rise when a right item is taken away or a wrong one added.
 */
public final class Marker {
  private final MarkingScheme scheme;

  public Marker(MarkingScheme scheme) {
    this.scheme = scheme;
  }

  public AnswerMarks mark(CaseKey key, LearnerAnswer answer) {
    Critique critique = Critic.of(key, answer);
    List<PointMarks> points = new ArrayList<>();
    double sum = 0;
    for (FootCritique foot : critique.feet()) {
      for (Map.Entry<MarkedPoint, MarkingScheme.Worth> worth : scheme.points().entrySet()) {
        double marks = scheme.rounded(marks(foot, worth.getKey(), worth.getValue()));
        points.add(new PointMarks(foot.limb(), worth.getKey(), marks, worth.getValue().marks()));
        sum += marks;
      }
    }
    double of = scheme.ofOneFoot() * critique.feet().size();
    double cap = scheme.rounded(scheme.dangerous() * of);
    long dangerous = critique.dangerous();
    double given = dangerous > 0 ? Math.min(sum, cap) : sum;
    return new AnswerMarks(critique, List.copyOf(points), sum, given, of, cap, dangerous);
  }

  private double marks(FootCritique foot, MarkedPoint point, MarkingScheme.Worth worth) {
    if (!point.answered(foot.answer())) {
      return 0;
    }
    List<Point> said = point.of(foot);
    return worth.marks() * (point.single() ? single(said.get(0)) : list(said, worth.enough()));
  }

  /** The share won by one word. */
  private double single(Point point) {
    return switch (point.verdict()) {
      case AGREED -> 1;
      case DEFENSIBLE -> point.view() == null ? scheme.defensible() : 1;
      case RIGHT_FOR_ANOTHER_REASON -> scheme.anotherReason();
      default -> 0;
    };
  }

  /** The share won by a list: what is right of what is wanted, less what is wrong. */
  private double list(List<Point> said, int enough) {
    double right = 0;
    int wanted = 0;
    int wrong = 0;
    for (Point point : said) {
      wanted += point.key() ? 1 : 0;
      wrong += point.verdict().wrong() ? 1 : 0;
      right += point.key() ? share(point) : 0;
    }
    int needed = enough == 0 ? wanted : Math.min(enough, wanted);
    double won = needed == 0 ? 1 : Math.min(1, right / needed);
    return Math.max(0, won - wrong * scheme.wrong());
  }

  private double share(Point point) {
    return switch (point.verdict()) {
      case AGREED -> 1;
      case DEFENSIBLE -> point.view() == null ? 0 : 1;
      case RIGHT_FOR_ANOTHER_REASON -> scheme.anotherReason();
      default -> 0;
    };
  }
}
