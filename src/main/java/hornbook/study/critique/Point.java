package hornbook.study.critique;

import hornbook.rulebook.fact.Basis;
import hornbook.study.exercise.OtherView;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One point of a critique.
 *
 * @param subject the id, path or word it is about
 * @param key whether the model answer has it: it counts for marks
 * @param wanted what the rule base would have said, where that is one word, else null
 * @param evidence the rules that bear on it, the weightiest first
 * @param view the author who would choose as the learner did, or null
 * @param departs the learner's reason for going another way, where it was weighed, or null
 */
public record Point(
    About about,
    String subject,
    PointVerdict verdict,
    boolean key,
    String wanted,
    List<Evidence> evidence,
    OtherView view,
    String departs) {
  static Point of(About about, String subject, PointVerdict verdict, List<Evidence> evidence) {
    return new Point(about, subject, verdict, false, null, evidence, null, null);
  }

  Point keyed() {
    return new Point(about, subject, verdict, true, wanted, evidence, view, departs);
  }

  Point wanting(String word) {
    return new Point(about, subject, verdict, key, word, evidence, view, departs);
  }

  Point with(OtherView other) {
    return new Point(about, subject, verdict, key, wanted, evidence, other, departs);
  }

  Point departing(String why) {
    return new Point(about, subject, verdict, key, wanted, evidence, view, why);
  }

  /** The rules behind it, each once. */
  public List<String> rules() {
    return evidence.stream().map(Evidence::rule).distinct().toList();
  }

  /** The keys of the works behind it, each once. */
  public List<String> sources() {
    Set<String> sources = new LinkedHashSet<>();
    evidence.forEach(one -> sources.addAll(one.sources()));
    if (view != null) {
      sources.add(view.source());
    }
    return List.copyOf(sources);
  }

  /** The weakest ground behind it, or null where no rule is. */
  public Basis basis() {
    return evidence.stream().map(Evidence::basis).reduce(Basis::weaker).orElse(null);
  }
}
