package hornbook.study.critique;

import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.OtherView;
import java.util.List;
import java.util.Optional;

/**
 * What is said of a technique or support that a learner would use. What a call for the vet forbids
 * stays dangerous whatever the reason; what else is ruled out is dangerous unless the learner says
 * why the advice is not followed; what needs the vet is dangerous where no vet is called.
 */
final class Choice {
  private Choice() {}

  /**
   * @param instead what to say of it where it may be used, if that is not what its verdict says
   */
  static Point point(
      About about,
      FootKey key,
      FootAnswer answer,
      OptionAdvice chosen,
      OtherView view,
      Optional<PointVerdict> instead) {
    List<Evidence> forbids = key.forbids(chosen);
    if (!forbids.isEmpty() && !key.vetDirects()) {
      return Point.of(about, chosen.id(), PointVerdict.UNFOUNDED_DANGEROUS, forbids);
    }
    Verdict verdict = chosen.verdict();
    List<Evidence> evidence = FootKey.reasons(chosen, bearings(verdict));
    if (verdict == Verdict.FIRST_CHOICE || verdict == Verdict.WORKABLE) {
      return Point.of(about, chosen.id(), instead.orElse(usable(about, verdict)), evidence)
          .with(view);
    }
    if (verdict == Verdict.WITH_VET) {
      boolean called = key.vetDirects() || VetPart.rank(answer.vet()) > 0;
      PointVerdict with = called ? PointVerdict.DEFENSIBLE : PointVerdict.UNFOUNDED_DANGEROUS;
      Point point = Point.of(about, chosen.id(), with, evidence);
      return with.dangerous() ? point : point.with(view);
    }
    if (view != null) {
      return Point.of(about, chosen.id(), PointVerdict.DEFENSIBLE, evidence).with(view);
    }
    if (answer.departing()) {
      return Point.of(about, chosen.id(), PointVerdict.DEFENSIBLE, evidence)
          .departing(answer.departs());
    }
    boolean ruledOut = verdict == Verdict.RULED_OUT;
    return Point.of(
        about,
        chosen.id(),
        ruledOut ? PointVerdict.UNFOUNDED_DANGEROUS : PointVerdict.UNFOUNDED,
        ruledOut ? evidence : silentFor(key, chosen, evidence));
  }

  private static PointVerdict usable(About about, Verdict verdict) {
    boolean first = verdict == Verdict.FIRST_CHOICE || about == About.SUPPORT;
    return first ? PointVerdict.AGREED : PointVerdict.DEFENSIBLE;
  }

  private static Bearing[] bearings(Verdict verdict) {
    return switch (verdict) {
      case FIRST_CHOICE, WORKABLE -> new Bearing[] {Bearing.FOR, Bearing.AGAINST};
      case WITH_VET -> new Bearing[] {Bearing.NEEDS_VET};
      case NOT_INDICATED -> new Bearing[] {Bearing.AGAINST, Bearing.NEEDS_VET};
      case RULED_OUT -> new Bearing[] {Bearing.RULES_OUT};
    };
  }

  /** What would have to be so for it: the rule for it that is nearest to firing. */
  private static List<Evidence> silentFor(
      FootKey key, OptionAdvice chosen, List<Evidence> against) {
    if (!against.isEmpty()) {
      return against;
    }
    return key
        .wouldSay(
            one ->
                one instanceof hornbook.rulebook.RuleConclusion.Reasons reasons
                    && reasons.bearing() == Bearing.FOR
                    && reasons.subjects().contains(chosen.id()))
        .stream()
        .limit(1)
        .map(Evidence::silent)
        .toList();
  }
}
