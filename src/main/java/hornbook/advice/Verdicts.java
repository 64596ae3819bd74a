package hornbook.advice;

import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Turns reasons into verdicts and ranks the techniques: no scores, a fixed order of questions
 * ({@link VerdictOrder}), stated in the contributors' guide and in the handbook.
 */
public final class Verdicts {
  private final Urgency urgency;
  private final boolean vetDirects;
  private final Set<String> defects;
  private final Predicate<String> firstAid;
  private final boolean choose;

  /**
   * @param urgency the most urgent referral on the foot, or null
   * @param vetDirects whether a vet has taken the case in hand
   * @param defects the findings a technique has to answer
   * @param firstAid whether a technique or support is first aid
   */
  public Verdicts(
      Urgency urgency, boolean vetDirects, Set<String> defects, Predicate<String> firstAid) {
    this.urgency = urgency;
    this.vetDirects = vetDirects;
    this.defects = Set.copyOf(defects);
    this.firstAid = firstAid;
    this.choose = urgency != Urgency.NOW;
  }

  private Verdicts(Verdicts from) {
    this.urgency = from.urgency;
    this.vetDirects = from.vetDirects;
    this.defects = from.defects;
    this.firstAid = from.firstAid;
    this.choose = false;
  }

  /** The same where another foot of the horse calls the vet for now: nothing is first choice. */
  public Verdicts withoutChoice() {
    return new Verdicts(this);
  }

  /** The verdict on one technique or support, before one of the techniques is made first choice. */
  public Verdict verdict(String id, List<ReasonGiven> reasons) {
    boolean waits = !firstAid.test(id);
    return VerdictOrder.of(
        any(reasons, Bearing.RULES_OUT),
        waits && urgency == Urgency.NOW,
        vetDirects,
        any(reasons, Bearing.FOR),
        waits && urgency == Urgency.TODAY || any(reasons, Bearing.NEEDS_VET));
  }

  /**
   * Makes one workable technique first choice; they come in order of intervention, the least first.
   * While a vet is called for now, none.
   */
  public List<OptionAdvice> withFirstChoice(List<OptionAdvice> techniques) {
    if (!choose) {
      return techniques;
    }
    OptionAdvice chosen = null;
    for (OptionAdvice one : techniques) {
      boolean answers = one.verdict() == Verdict.WORKABLE && answersAllDefects(one);
      if (answers && (chosen == null || (spokenAgainst(chosen) && !spokenAgainst(one)))) {
        chosen = one;
      }
    }
    List<OptionAdvice> judged = new ArrayList<>(techniques.size());
    for (OptionAdvice one : techniques) {
      judged.add(
          one == chosen ? new OptionAdvice(one.id(), Verdict.FIRST_CHOICE, one.reasons()) : one);
    }
    return List.copyOf(judged);
  }

  /** First aid comes before every defect, which waits. */
  private boolean answersAllDefects(OptionAdvice one) {
    return firstAid.test(one.id()) || answered(one.reasons()).containsAll(defects);
  }

  /** The findings that the reasons for a technique rest on: it answers those. */
  static Set<String> answered(List<ReasonGiven> reasons) {
    Set<String> answered = new HashSet<>();
    for (ReasonGiven reason : reasons) {
      if (reason.bearing() == Bearing.FOR) {
        for (CitedFact fact : reason.because()) {
          if (fact instanceof Finding finding) {
            answered.add(finding.what());
          }
        }
      }
    }
    return answered;
  }

  static boolean spokenAgainst(OptionAdvice judged) {
    return any(judged.reasons(), Bearing.AGAINST);
  }

  static boolean any(List<ReasonGiven> reasons, Bearing bearing) {
    for (ReasonGiven reason : reasons) {
      if (reason.bearing() == bearing) {
        return true;
      }
    }
    return false;
  }
}
