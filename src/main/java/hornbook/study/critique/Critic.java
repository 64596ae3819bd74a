package hornbook.study.critique;

import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.LearnerAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Compares answers with the rule base: a pure function of the key and the answer. */
public final class Critic {
  private static final List<Part> PARTS =
      List.of(
          new VetPart(),
          new TechniquePart(),
          new ReasonPoints(),
          new RuledOutPart(),
          new SupportPoints(),
          new FindingPart(),
          new CautionPart(),
          new QuestionPart(),
          new VisitPart());

  private Critic() {}

  /** One part of an answer. */
  interface Part {
    void add(FootKey key, FootAnswer answer, List<Point> to);
  }

  /** The critique of an answer, of every foot that is to be answered. */
  public static Critique of(CaseKey key, LearnerAnswer answer) {
    List<FootCritique> feet = new ArrayList<>();
    key.feet().forEach((limb, foot) -> feet.add(of(foot, answer.foot(limb))));
    return new Critique(key, answer, List.copyOf(feet));
  }

  /** The same of one foot. */
  public static FootCritique of(FootKey key, FootAnswer answer) {
    List<Point> points = new ArrayList<>();
    PARTS.forEach(part -> part.add(key, answer, points));
    points.sort(Comparator.comparing(Point::verdict).thenComparing(Point::about));
    return new FootCritique(key.foot().limb(), key, answer, List.copyOf(points));
  }
}
