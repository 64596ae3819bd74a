package hornbook.advice;

import hornbook.assessment.Assessment;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The advice on a visit: one part for each foot assessed. */
public record Advice(Rulebook rulebook, Assessment assessment, List<FootAdvice> feet) {
  /** The most urgent referral on any foot, or empty. */
  public Optional<Urgency> urgency() {
    return feet.stream().flatMap(foot -> foot.urgency().stream()).min(Comparator.naturalOrder());
  }

  /** What the calls of any foot forbid the horse to do: it moves on all of them. */
  public Reserves moves() {
    return feet.stream()
        .flatMap(foot -> foot.referrals().stream())
        .map(referral -> referral.reserves().movesOfTheHorse())
        .reduce(Reserves.NOTHING, Reserves::and);
  }

  public boolean provisional() {
    return feet.stream().anyMatch(FootAdvice::provisional);
  }
}
