package hornbook.study.critique;

import hornbook.advice.Question;
import hornbook.advice.ReferralGiven;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.fact.Urgency;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.Vocabulary;
import java.util.List;

/** Whether the vet is called in time, and for what. */
final class VetPart implements Critic.Part {
  private static final int TODAY = rank(Urgency.TODAY.word());

  /** How soon: 0 for not at all, more for sooner. */
  static int rank(String urgency) {
    return urgency == null ? 0 : Vocabulary.URGENCIES.indexOf(urgency);
  }

  @Override
  public void add(FootKey key, FootAnswer answer, List<Point> to) {
    String needed = key.model().vet();
    to.add(
        Point.of(
                About.VET,
                answer.vet() == null ? needed : answer.vet(),
                verdict(key, answer),
                calls(key))
            .with(view(key, answer))
            .wanting(needed)
            .keyed());
    if (answer.vetFor() != null) {
      key.foot().referrals().forEach(one -> to.add(danger(one, answer)));
      answer.vetFor().stream()
          .filter(id -> key.referral(id).isEmpty())
          .forEach(id -> to.add(unneeded(key, id)));
    } else if (!key.foot().referrals().isEmpty()) {
      key.foot()
          .referrals()
          .forEach(
              one ->
                  to.add(
                      Point.of(
                              About.VET,
                              one.id(),
                              PointVerdict.UNANSWERED,
                              List.of(Evidence.of(one)))
                          .keyed()));
    }
  }

  private static List<Evidence> calls(FootKey key) {
    return key.foot().referrals().stream().map(Evidence::of).toList();
  }

  private static hornbook.study.exercise.OtherView view(FootKey key, FootAnswer answer) {
    return key.views().stream()
        .filter(one -> one.vet() != null && one.vet().equals(answer.vet()))
        .findFirst()
        .orElse(null);
  }

  private static PointVerdict verdict(FootKey key, FootAnswer answer) {
    if (answer.vet() == null) {
      return PointVerdict.UNANSWERED;
    }
    int called = rank(answer.vet());
    int needed = rank(key.model().vet());
    if (called == needed) {
      return PointVerdict.AGREED;
    }
    if (called < needed) {
      return needed >= TODAY
          ? PointVerdict.MISSED_DANGEROUS
          : argued(key, answer, PointVerdict.MISSED);
    }
    boolean careful = called == needed + 1 || called <= couldBe(key);
    return careful ? PointVerdict.DEFENSIBLE : argued(key, answer, PointVerdict.UNFOUNDED);
  }

  private static PointVerdict argued(FootKey key, FootAnswer answer, PointVerdict otherwise) {
    return view(key, answer) == null ? otherwise : PointVerdict.DEFENSIBLE;
  }

  /** How soon the vet could be needed by what was not looked at. */
  private static int couldBe(FootKey key) {
    return key.foot().questions().stream()
        .map(Question::urgency)
        .filter(one -> one != null)
        .mapToInt(one -> rank(one.word()))
        .max()
        .orElse(0);
  }

  /** A danger that is not named is only as bad as the call that was made without it. */
  private static Point danger(ReferralGiven given, FootAnswer answer) {
    List<Evidence> evidence = List.of(Evidence.of(given));
    if (answer.vetFor().contains(given.id())) {
      return Point.of(About.VET, given.id(), PointVerdict.AGREED, evidence).keyed();
    }
    int needed = rank(given.urgency().word());
    boolean dangerous = needed >= TODAY && rank(answer.vet()) < needed;
    PointVerdict verdict = dangerous ? PointVerdict.MISSED_DANGEROUS : PointVerdict.MISSED;
    return Point.of(About.VET, given.id(), verdict, evidence).keyed();
  }

  /** A danger that nothing shows: to be feared only where something was not looked at. */
  private static Point unneeded(FootKey key, String id) {
    List<RuleState> rules =
        key.wouldSay(one -> one instanceof RuleConclusion.Refers refers && refers.id().equals(id));
    boolean open = rules.stream().anyMatch(one -> one.truth() == Truth.UNKNOWN);
    return Point.of(
        About.VET,
        id,
        open ? PointVerdict.DEFENSIBLE : PointVerdict.UNFOUNDED,
        List.of(Evidence.silent(rules.get(0))));
  }
}
