package hornbook.study.critique;

import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.OtherView;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The technique chosen: whether it may be, and whether the reasons for it hold on this foot. */
final class TechniquePart implements Critic.Part {
  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    String first = key.model().technique();
    String chosen = answer.technique();
    if (chosen == null) {
      to.add(
          Point.of(About.TECHNIQUE, first, PointVerdict.UNANSWERED, behind(key, first))
              .wanting(first)
              .keyed());
    } else if (chosen.equals(Vocabulary.NONE)) {
      PointVerdict verdict = first.equals(chosen) ? PointVerdict.AGREED : PointVerdict.MISSED;
      to.add(
          Point.of(About.TECHNIQUE, chosen, nothing(key, verdict), behind(key, first))
              .wanting(first)
              .keyed());
    } else {
      to.add(judged(key, answer, key.judged(chosen)).wanting(first).keyed());
    }
  }

  /** Nothing today, where another author would wait as well. */
  private static PointVerdict nothing(FootKey key, PointVerdict verdict) {
    boolean argued = key.views().stream().anyMatch(one -> Vocabulary.NONE.equals(one.technique()));
    return argued && verdict == PointVerdict.MISSED ? PointVerdict.DEFENSIBLE : verdict;
  }

  private static List<Evidence> behind(FootKey key, String first) {
    return first.equals(Vocabulary.NONE)
        ? key.foot().referrals().stream().map(Evidence::of).toList()
        : FootKey.reasons(key.judged(first), Bearing.FOR);
  }

  private static Point judged(FootKey key, FootAnswer answer, OptionAdvice chosen) {
    OtherView view =
        key.views().stream()
            .filter(one -> chosen.id().equals(one.technique()))
            .findFirst()
            .orElse(null);
    return Choice.point(About.TECHNIQUE, key, answer, chosen, view, onItsGrounds(answer, chosen));
  }

  /**
   * What the first choice is called where the rules given for it do not carry it on this foot:
   * right by chance.
   */
  private static Optional<PointVerdict> onItsGrounds(FootAnswer answer, OptionAdvice chosen) {
    List<String> given = answer.becauseRules();
    List<String> hold = new ArrayList<>();
    FootKey.reasons(chosen, Bearing.FOR).forEach(one -> hold.add(one.rule()));
    boolean first = chosen.verdict() == Verdict.FIRST_CHOICE;
    boolean byChance = first && !given.isEmpty() && given.stream().noneMatch(hold::contains);
    return byChance ? Optional.of(PointVerdict.RIGHT_FOR_ANOTHER_REASON) : Optional.empty();
  }
}
