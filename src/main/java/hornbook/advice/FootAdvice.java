package hornbook.advice;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Held;
import hornbook.assessment.Limb;
import hornbook.rulebook.Shown;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;
import java.util.List;
import java.util.Optional;

/**
 * The advice on one foot. Every technique and every support is in it.
 *
 * @param provisional whether a sign that could make this the vet's case at once was not looked at
 */
public record FootAdvice(
    Limb limb,
    int index,
    boolean provisional,
    List<MeasureGiven> measures,
    List<FindingGiven> findings,
    List<ReferralGiven> referrals,
    List<OptionAdvice> techniques,
    List<OptionAdvice> supports,
    List<CautionGiven> cautions,
    List<Question> questions,
    FactSheet sheet,
    List<FiredRule> firings) {

  public Optional<OptionAdvice> firstChoice() {
    return techniques.stream().filter(one -> one.verdict() == Verdict.FIRST_CHOICE).findFirst();
  }

  public OptionAdvice technique(String id) {
    return find(techniques, id);
  }

  public OptionAdvice support(String id) {
    return find(supports, id);
  }

  /** All that the calls for the vet hold back on this foot, those on other feet among them. */
  public Reserves reserves() {
    Reserves all = Reserves.NOTHING;
    for (ReferralGiven referral : referrals) {
      all = all.and(referral.reserves());
    }
    for (Held held : sheet.held()) {
      all = all.and(held.reserves());
    }
    return all;
  }

  /** The referrals as pages tell them: without those that give way to a sooner one. */
  public List<ReferralGiven> calls() {
    boolean sooner = referrals.stream().anyMatch(one -> one.urgency() != Urgency.MENTION);
    return referrals.stream()
        .filter(one -> !sooner || one.shown() != Shown.UNLESS_CALLED_SOONER)
        .toList();
  }

  /** The most urgent referral's urgency, or empty. */
  public Optional<Urgency> urgency() {
    return referrals.stream().map(ReferralGiven::urgency).min(java.util.Comparator.naturalOrder());
  }

  private static OptionAdvice find(List<OptionAdvice> all, String id) {
    return all.stream().filter(one -> one.id().equals(id)).findFirst().orElse(null);
  }
}
