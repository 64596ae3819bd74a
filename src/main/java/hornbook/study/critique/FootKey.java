package hornbook.study.critique;

import hornbook.advice.FindingGiven;
import hornbook.advice.FiredRule;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.advice.condition.Appraisal;
import hornbook.advice.condition.ConditionState;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.Truth;
import hornbook.assessment.VetRole;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.OtherView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** All that answers on one foot are compared with; worked out once for any number of them. */
public final class FootKey {
  private final Rulebook book;
  private final FootAdvice foot;
  private final FootAnswer model;
  private final List<OtherView> views;
  private final boolean vetDirects;
  private final Map<String, RuleState> states;

  /** The rules, the nearest to firing first. */
  private final List<RuleState> nearest;

  private final Map<String, Evidence> fired = new HashMap<>();

  FootKey(Rulebook book, FootAdvice foot, FootAnswer model, List<OtherView> views, VetRole vet) {
    this.book = book;
    this.foot = foot;
    this.model = model;
    this.views = List.copyOf(views);
    this.vetDirects = vet == VetRole.DIRECTING;
    this.states = Appraisal.of(book, foot.sheet());
    this.nearest = new ArrayList<>(states.values());
    Map<RuleState, Integer> failing = new IdentityHashMap<>();
    nearest.forEach(state -> failing.put(state, failing(state)));
    nearest.sort(Comparator.comparing(failing::get));
    foot.cautions().forEach(one -> fired.put(one.rule(), Evidence.of(one)));
    foot.findings().forEach(one -> fired.put(one.rule(), finding(one)));
    for (List<OptionAdvice> all : List.of(foot.techniques(), foot.supports())) {
      all.forEach(one -> one.reasons().forEach(it -> fired.put(it.rule(), Evidence.of(it))));
    }
    foot.referrals().forEach(one -> fired.put(one.rule(), Evidence.of(one)));
  }

  public FootAdvice foot() {
    return foot;
  }

  /** The full answer. */
  public FootAnswer model() {
    return model;
  }

  List<OtherView> views() {
    return views;
  }

  boolean vetDirects() {
    return vetDirects;
  }

  /** The technique or the support of that id. */
  OptionAdvice judged(String id) {
    return foot.technique(id) == null ? foot.support(id) : foot.technique(id);
  }

  Optional<ReferralGiven> referral(String id) {
    return foot.referrals().stream().filter(one -> one.id().equals(id)).findFirst();
  }

  Evidence finding(FindingGiven given) {
    Basis weakest = book.rules().get(given.rule()).basis();
    for (CitedFact fact : given.because()) {
      weakest = fact instanceof Limit limit ? weakest.weaker(limit.basis()) : weakest;
    }
    return Evidence.of(given, weakest);
  }

  /** Whether a rule fired on this foot. */
  boolean fired(String rule) {
    return foot.firings().stream().map(FiredRule::rule).anyMatch(rule::equals);
  }

  RuleState state(String rule) {
    return states.get(rule);
  }

  /** What a rule says of this foot, or how it stands where it is silent. */
  Evidence evidence(String rule) {
    Evidence given = fired.get(rule);
    return given == null ? Evidence.silent(states.get(rule)) : given;
  }

  /** The rules that would have concluded something, the nearest to firing first. */
  List<RuleState> wouldSay(Predicate<RuleConclusion> what) {
    List<RuleState> would = new ArrayList<>();
    for (RuleState state : nearest) {
      if (what.test(state.rule().outcome())) {
        would.add(state);
      }
    }
    return would;
  }

  private static int failing(RuleState state) {
    int failing = 0;
    for (ConditionState one : state.conditions()) {
      failing += one.truth() == Truth.TRUE ? 0 : 1;
    }
    return failing;
  }

  /** The reasons on a technique or support of the given bearings. */
  static List<Evidence> reasons(OptionAdvice judged, Bearing... bearings) {
    List<Evidence> reasons = new ArrayList<>();
    for (ReasonGiven reason : judged.reasons()) {
      if (List.of(bearings).contains(reason.bearing())) {
        reasons.add(Evidence.of(reason));
      }
    }
    return reasons;
  }

  /** The calls for the vet that forbid a technique or a support until the vet has come. */
  List<Evidence> forbids(OptionAdvice judged) {
    return reasons(judged, Bearing.RULES_OUT, Bearing.NEEDS_VET).stream()
        .filter(one -> refers(book.rules().get(one.rule())))
        .toList();
  }

  private static boolean refers(RuleEntry rule) {
    return rule.outcome() instanceof RuleConclusion.Refers;
  }
}
