package hornbook.study.marking;

import hornbook.study.critique.About;
import hornbook.study.critique.Critic;
import hornbook.study.critique.FootCritique;
import hornbook.study.critique.FootKey;
import hornbook.study.critique.Point;
import hornbook.study.critique.PointVerdict;
import hornbook.study.exercise.FootAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the marks of a class tell. What cannot be computed is null, never made up.
 *
 * @param points the points in the order of the scheme
 * @param missed what most learners missed or had wrong, the most often first
 */
public record ClassAnalysis(
    int answers,
    int marked,
    Double mean,
    Double median,
    Double kr20,
    Double alpha,
    List<Item> points,
    List<Missed> missed) {
  /**
   * One point.
   *
   * @param difficulty the share of its marks that was won
   * @param discrimination its correlation with the rest of the marks
   * @param rules those of the model answer behind it
   */
  public record Item(
      String id,
      MarkedPoint point,
      String says,
      Double difficulty,
      Double discrimination,
      List<String> rules) {}

  /**
   * Something that was missed, or said and does not hold.
   *
   * @param id the foot and what it is about
   * @param learners how many
   */
  public record Missed(
      String id,
      About about,
      String subject,
      PointVerdict verdict,
      int learners,
      List<String> rules) {}

  /** Works it out; the sums are those before any cap. */
  public static ClassAnalysis of(ClassMarks marks) {
    List<AnswerMarks> marked = marks.marked();
    double[] totals = marked.stream().mapToDouble(AnswerMarks::marks).toArray();
    double[][] scores = new double[marked.size()][];
    double[][] won = new double[marked.size()][];
    for (int row = 0; row < scores.length; row++) {
      List<PointMarks> points = marked.get(row).points();
      scores[row] = points.stream().mapToDouble(PointMarks::marks).toArray();
      won[row] = points.stream().mapToDouble(point -> point.won() ? 1 : 0).toArray();
    }
    return new ClassAnalysis(
        marks.rows().size(),
        marked.size(),
        totals.length == 0 ? null : Reliability.mean(totals),
        totals.length == 0 ? null : Reliability.median(totals),
        scores.length == 0 ? null : Reliability.kr20(won),
        scores.length == 0 ? null : Reliability.alpha(scores),
        items(marks, marked, scores),
        missed(marked));
  }

  private static List<Item> items(ClassMarks marks, List<AnswerMarks> marked, double[][] scores) {
    List<Item> items = new ArrayList<>();
    if (marked.isEmpty()) {
      return items;
    }
    List<PointMarks> points = marked.get(0).points();
    for (int at = 0; at < points.size(); at++) {
      PointMarks point = points.get(at);
      double won = Reliability.mean(Reliability.column(scores, at));
      items.add(
          new Item(
              point.id(),
              point.point(),
              marks.scheme().points().get(point.point()).says(),
              point.of() > 0 ? won / point.of() : null,
              Reliability.discrimination(scores, at),
              rules(marks, point)));
    }
    return List.copyOf(items);
  }

  /** The rules behind what the model answer has: a blank answer misses all of it. */
  private static List<String> rules(ClassMarks marks, PointMarks point) {
    Set<String> rules = new LinkedHashSet<>();
    FootKey foot = marks.key().feet().get(point.limb());
    FootCritique blank = Critic.of(foot, FootAnswer.blank(point.limb()));
    point.point().of(blank).stream().filter(Point::key).forEach(one -> rules.addAll(one.rules()));
    return List.copyOf(rules);
  }

  private static List<Missed> missed(List<AnswerMarks> marked) {
    Map<String, Missed> missed = new LinkedHashMap<>();
    for (AnswerMarks one : marked) {
      for (FootCritique foot : one.critique().feet()) {
        for (Point point : foot.points()) {
          if (!point.verdict().stands() && (point.key() || point.verdict().wrong())) {
            count(foot, point, missed);
          }
        }
      }
    }
    return missed.values().stream()
        .sorted(
            Comparator.comparing((Missed one) -> !one.verdict().dangerous())
                .thenComparing(Missed::learners, Comparator.reverseOrder())
                .thenComparing(Missed::about)
                .thenComparing(Missed::id)
                .thenComparing(Missed::subject))
        .toList();
  }

  /** Left out and not answered are the same to whoever teaches. */
  private static void count(FootCritique foot, Point point, Map<String, Missed> missed) {
    PointVerdict verdict =
        point.verdict() == PointVerdict.UNANSWERED ? PointVerdict.MISSED : point.verdict();
    String id = foot.limb().word() + "/" + point.about().word();
    boolean word = point.wanted() != null && point.about() != About.RULED_OUT;
    String wanted = word ? point.wanted() : point.subject();
    String subject = verdict.wrong() ? point.subject() : wanted;
    missed.merge(
        String.join(" ", id, subject, verdict.word()),
        new Missed(id, point.about(), subject, verdict, 1, point.rules()),
        (one, other) ->
            new Missed(id, one.about(), subject, verdict, one.learners() + 1, one.rules()));
  }
}
