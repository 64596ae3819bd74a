package hornbook.study.marking;

import hornbook.rulebook.RuleEntry;
import hornbook.study.critique.About;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.Critic;
import hornbook.study.critique.FootKey;
import hornbook.study.critique.Point;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.FootAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The cases to teach next: those whose model answers rest on the rules that most of the class
 * missed. A rule weighs as many marks as the class lost by it. The case that carries most of that
 * comes first; the next is chosen by what is left.
 */
public final class NextCases {
  private static final int MOST = 3;

  /** The parts of an answer whose rules decide what is done; one may be taught by the other. */
  private static final Set<About> DECIDING =
      Set.of(About.VET, About.TECHNIQUE, About.REASON, About.RULED_OUT, About.SUPPORT);

  private final Exercise done;
  private final ClassMarks marks;
  private final Map<Lacking, Double> lacking = new LinkedHashMap<>();
  private final Map<String, Integer> learners = new LinkedHashMap<>();

  /** A rule, and the part of an answer it was missed in. */
  private record Lacking(String rule, About about) {}

  /**
   * A case to teach next.
   *
   * @param rules those its model answer rests on and the class missed, the weightiest first, each
   *     with how many learners; empty where the case is on the same topic and no more
   */
  public record Next(Exercise exercise, Map<String, Integer> rules) {}

  private NextCases(ClassMarks marks, Exercise done) {
    this.marks = marks;
    this.done = done;
    List<ClassAnalysis.Missed> missed = ClassAnalysis.of(marks).missed();
    int half = (marks.marked().size() + 1) / 2;
    boolean shared = missed.stream().anyMatch(one -> one.learners() >= half);
    for (ClassAnalysis.Missed one : missed) {
      if (!shared || one.learners() >= half || one.verdict().dangerous()) {
        weigh(one);
      }
    }
  }

  /**
   * Chooses them, three at the most.
   *
   * @param done the case the class has answered
   * @param keys the model answers of the library
   */
  public static List<Next> after(
      ClassMarks marks, Exercise done, List<Exercise> library, Function<Exercise, CaseKey> keys) {
    return new NextCases(marks, done).among(library, keys);
  }

  private void weigh(ClassAnalysis.Missed missed) {
    double worth = missed.learners() * worth(missed.about());
    for (String rule : missed.rules()) {
      lacking.merge(new Lacking(rule, part(missed.about())), worth, Double::sum);
      learners.merge(rule, missed.learners(), Math::max);
    }
  }

  /** What one item of a part is worth; a part the scheme gives no marks for counts a little. */
  private double worth(About about) {
    double worth = 0.1;
    for (Map.Entry<MarkedPoint, MarkingScheme.Worth> one : marks.scheme().points().entrySet()) {
      if (one.getKey().about() == about) {
        worth = Math.max(worth, one.getValue().marks() / Math.max(1, one.getValue().enough()));
      }
    }
    return worth;
  }

  private static About part(About about) {
    return DECIDING.contains(about) ? About.TECHNIQUE : about;
  }

  private List<Next> among(List<Exercise> library, Function<Exercise, CaseKey> keys) {
    Map<Exercise, Set<Lacking>> carried = new LinkedHashMap<>();
    for (Exercise one : library) {
      if (!one.name().equals(done.name())) {
        Set<Lacking> rests = restsOn(keys.apply(one));
        rests.retainAll(lacking.keySet());
        carried.put(one, rests);
      }
    }
    List<Next> next = rule(carried);
    return next.isEmpty() ? topic(library) : next;
  }

  /** By the rules themselves. */
  private List<Next> rule(Map<Exercise, Set<Lacking>> carried) {
    List<Next> next = new ArrayList<>();
    Set<Lacking> open = new HashSet<>(lacking.keySet());
    while (next.size() < MOST) {
      carried.values().forEach(rests -> rests.retainAll(open));
      Exercise best = carried.keySet().stream().min(order(carried)).orElse(null);
      if (best == null || carried.get(best).isEmpty()) {
        break;
      }
      next.add(new Next(best, rules(carried.get(best))));
      open.removeAll(Set.copyOf(carried.remove(best)));
    }
    return List.copyOf(next);
  }

  /** Where no other case rests on the same rules: one on the topic of the weightiest. */
  private List<Next> topic(List<Exercise> library) {
    Map<String, RuleEntry> rules = marks.key().advice().rulebook().rules();
    return lacking.keySet().stream()
        .max(Comparator.comparing((Lacking one) -> lacking.get(one)))
        .map(one -> rules.get(one.rule()).topic())
        .flatMap(
            topic ->
                library.stream()
                    .filter(one -> !one.name().equals(done.name()) && one.topics().contains(topic))
                    .min(easier()))
        .map(one -> List.of(new Next(one, Map.of())))
        .orElse(List.of());
  }

  /** What carries most comes first; then the other half of a pair, then the easier case. */
  private Comparator<Exercise> order(Map<Exercise, Set<Lacking>> carried) {
    return Comparator.comparing(
            (Exercise one) -> carried.get(one).stream().mapToDouble(lacking::get).sum(),
            Comparator.reverseOrder())
        .thenComparing(easier());
  }

  private Comparator<Exercise> easier() {
    return Comparator.comparing((Exercise one) -> !done.name().equals(one.pair()))
        .thenComparing(Exercise::level)
        .thenComparing(Exercise::name);
  }

  /** The rules behind the model answer: a blank answer misses all of it. */
  private static Set<Lacking> restsOn(CaseKey key) {
    Set<Lacking> rests = new HashSet<>();
    for (FootKey foot : key.feet().values()) {
      FootAnswer blank = FootAnswer.blank(foot.foot().limb());
      Critic.of(foot, blank).points().stream()
          .filter(Point::key)
          .forEach(
              point ->
                  point.rules().forEach(rule -> rests.add(new Lacking(rule, part(point.about())))));
    }
    return rests;
  }

  private Map<String, Integer> rules(Set<Lacking> rests) {
    Map<String, Integer> rules = new LinkedHashMap<>();
    rests.stream()
        .sorted(
            Comparator.comparing((Lacking one) -> lacking.get(one), Comparator.reverseOrder())
                .thenComparing(Lacking::rule))
        .forEach(one -> rules.putIfAbsent(one.rule(), learners.get(one.rule())));
    return rules;
  }
}
