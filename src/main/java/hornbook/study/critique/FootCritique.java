package hornbook.study.critique;

import hornbook.assessment.Limb;
import hornbook.study.exercise.FootAnswer;
import java.util.List;

/**
 * What is said of an answer on one foot: danger first, then what was right, then what was missed.
 */
public record FootCritique(Limb limb, FootKey key, FootAnswer answer, List<Point> points) {
  public long dangerous() {
    return points.stream().filter(point -> point.verdict().dangerous()).count();
  }

  /** The points about one part of the answer. */
  public List<Point> about(About about) {
    return points.stream().filter(point -> point.about() == about).toList();
  }
}
