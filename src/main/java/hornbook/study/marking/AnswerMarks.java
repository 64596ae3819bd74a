package hornbook.study.marking;

import hornbook.study.critique.Critique;
import java.util.List;

/**
 * The marks of one answer.
 *
 * @param before the sum of the points
 * @param marks what is given: the sum, or the cap where a dangerous miss brings it down
 * @param dangerous how many dangerous misses
 */
public record AnswerMarks(
    Critique critique,
    List<PointMarks> points,
    double before,
    double marks,
    double of,
    double cap,
    long dangerous) {
  /** Whether the cap holds for this answer. */
  public boolean capped() {
    return dangerous > 0;
  }
}
