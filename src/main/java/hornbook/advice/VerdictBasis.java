package hornbook.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What settled the verdict on a technique or a support.
 *
 * @param about the findings left unanswered, or the technique that comes before; else empty
 */
public record VerdictBasis(By by, List<String> about) {
  /** The ways a verdict is settled. */
  public enum By {
    /** A reason rules it out. */
    RULED_OUT,
    /** The vet has to come first, or directs the case. */
    VET_FIRST,
    /** No reason supports it. */
    NOTHING_FOR,
    /** Among the techniques that answer all defects, this one comes first. */
    COMES_FIRST,
    /** Workable, but some defect is left unanswered by what supports it. */
    DEFECT_LEFT,
    /** Workable, but something speaks against it, and nothing against the first choice. */
    SPOKEN_AGAINST,
    /** Workable, but the first choice interferes less, or is spoken against less. */
    ANOTHER_FIRST,
    /** First aid while the vet is awaited: nothing is first choice until then. */
    VET_AWAITED,
    /** A support that may be used: supports are not ranked. */
    MAY_BE_USED
  }

  /** What settled the verdict on a technique or a support of this foot. */
  public static VerdictBasis of(FootAdvice foot, OptionAdvice judged) {
    return switch (judged.verdict()) {
      case RULED_OUT -> new VerdictBasis(By.RULED_OUT, List.of());
      case WITH_VET -> new VerdictBasis(By.VET_FIRST, List.of());
      case NOT_INDICATED -> new VerdictBasis(By.NOTHING_FOR, List.of());
      case FIRST_CHOICE -> new VerdictBasis(By.COMES_FIRST, List.of());
      case WORKABLE ->
          foot.techniques().contains(judged)
              ? notFirst(foot, judged)
              : new VerdictBasis(By.MAY_BE_USED, List.of());
    };
  }

  private static VerdictBasis notFirst(FootAdvice foot, OptionAdvice judged) {
    List<String> left = new ArrayList<>();
    Set<String> answered = Verdicts.answered(judged.reasons());
    for (FindingGiven finding : foot.findings()) {
      if (finding.defect() && !answered.contains(finding.id())) {
        left.add(finding.id());
      }
    }
    if (!left.isEmpty()) {
      return new VerdictBasis(By.DEFECT_LEFT, left);
    }
    if (foot.firstChoice().isEmpty()) {
      return new VerdictBasis(By.VET_AWAITED, List.of());
    }
    OptionAdvice first = foot.firstChoice().get();
    boolean against = Verdicts.spokenAgainst(judged) && !Verdicts.spokenAgainst(first);
    return new VerdictBasis(against ? By.SPOKEN_AGAINST : By.ANOTHER_FIRST, List.of(first.id()));
  }
}
