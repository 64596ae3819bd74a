package hornbook.study.rulecase;

import hornbook.advice.FiredRule;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.load.LoadedRules;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;

/**
 * Whether every rule has its case, and every case does what it is there for: the foot fires the
 * rule, the rule concludes what the case expects, each single change silences it, and every limit
 * turns it where the limit stands.
 */
public final class CaseCheck {
  private final LoadedRules rules;
  private final Rulebook book;
  private final Advisor advisor;

  public CaseCheck(LoadedRules rules) {
    this.rules = rules;
    this.book = rules.book();
    this.advisor = new Advisor(rules);
  }

  /**
   * All faults of all cases.
   *
   * @param done takes the number of cases that are done
   */
  public List<RuleFault> faults(CaseLibrary library, LongConsumer done) throws IOException {
    List<RuleFault> faults = new ArrayList<>(written(book, library));
    long cases = 0;
    for (Map.Entry<String, RuleCase> one : library.rules().entrySet()) {
      faults.addAll(faults(one.getKey(), one.getValue()));
      done.accept(++cases);
    }
    return faults;
  }

  /** What shows without running a case: those that cannot be read, and rules without one. */
  public static List<RuleFault> written(Rulebook book, CaseLibrary library) {
    List<RuleFault> faults = new ArrayList<>(library.faults());
    Set<String> unread = new HashSet<>();
    library.faults().forEach(fault -> unread.add(fault.rule()));
    for (RuleEntry rule : book.rules().values()) {
      if (!library.rules().containsKey(rule.id()) && !unread.contains(rule.id())) {
        faults.add(missing(rule));
      }
    }
    for (RuleCase one : library.rules().values()) {
      RuleEntry rule = book.rules().get(one.rule());
      if (rule != null) {
        concludes(one, ExpectedConclusion.of(rule.outcome()), faults);
      }
    }
    return faults;
  }

  /** What is told of a rule without a case. */
  static RuleFault missing(RuleEntry rule) {
    return new RuleFault(
        rule.file(),
        rule.line(),
        rule.id(),
        "the rule has no case",
        "write cases/rules/"
            + rule.id()
            + ".yaml: a foot that fires it, and one change that silences it");
  }

  /** The faults of one case. */
  public List<RuleFault> faults(String name, RuleCase one) throws IOException {
    List<RuleFault> faults = new ArrayList<>();
    RuleEntry rule = book.rules().get(one.rule());
    if (rule == null) {
      faults.add(fault(one, "there is no such rule", "name a rule, or take the case out"));
    } else if (!name.equals(one.rule()) && !name.startsWith(one.rule() + "-")) {
      faults.add(
          fault(
              one,
              "the file is called " + name,
              "call it " + one.rule() + ".yaml, or a further case " + one.rule() + "-word.yaml"));
    } else {
      try {
        turns(rule, one, faults);
        for (String limit : rule.limits().distinct().toList()) {
          limit(one, limit, faults);
        }
        for (String limit : one.limits().keySet()) {
          if (rule.limits().noneMatch(limit::equals)) {
            faults.add(fault(one, "the rule binds no limit " + limit, "take the bracket out"));
          }
        }
      } catch (RuleCase.Unusable unusable) {
        faults.add(
            fault(
                one,
                "a change of the case cannot be made: " + unusable.getMessage(),
                "write it as path=value, with a value the field takes"));
      }
    }
    return faults;
  }

  /** Tells where the rule concludes something else than its case expects. */
  private static void concludes(
      RuleCase one, ExpectedConclusion concluded, List<RuleFault> faults) {
    if (one.expects() == null) {
      faults.add(
          fault(
              one,
              "the case does not say what the rule concludes",
              "write expects: " + concluded.yaml()));
    } else if (!one.expects().silent() && !one.expects().equals(concluded)) {
      faults.add(
          fault(
              one,
              "expects " + one.expects().yaml() + ", but the rule concludes " + concluded.yaml(),
              "settle which of the two is right, and change the other"));
    }
  }

  private void turns(RuleEntry rule, RuleCase one, List<RuleFault> faults)
      throws IOException, RuleCase.Unusable {
    if (one.expects() != null && one.expects().silent()) {
      staysSilent(one, faults);
    } else {
      fires(rule, one, faults);
    }
  }

  private void staysSilent(RuleCase one, List<RuleFault> faults)
      throws IOException, RuleCase.Unusable {
    if (fires(one)) {
      faults.add(
          fault(one, "the foot fires the rule", "take expects: silent out, or mend the rule"));
    }
    if (!fires(one, one.nearMiss())) {
      faults.add(
          fault(
              one,
              "the rule stays silent after " + one.nearMiss(),
              "name a change that fires it: else it is silent for other reasons"));
    }
  }

  private void fires(RuleEntry rule, RuleCase one, List<RuleFault> faults)
      throws IOException, RuleCase.Unusable {
    FiredRule firing = firing(advisor, one, one.assessment());
    if (firing == null) {
      faults.add(
          fault(
              one,
              "the foot does not fire the rule",
              "see why: hornbook why-not " + CaseLibrary.shown(one.file()) + " " + rule.id()));
      return;
    }
    concludes(one, ExpectedConclusion.of(firing.conclusion()), faults);
    List<String> changes = new ArrayList<>(List.of(one.nearMiss()));
    changes.addAll(one.silent());
    for (String change : changes) {
      if (fires(one, change)) {
        faults.add(
            fault(one, "the rule still fires after " + change, "name a change that silences it"));
      }
    }
  }

  private void limit(RuleCase one, String limit, List<RuleFault> faults)
      throws IOException, RuleCase.Unusable {
    List<RuleCase.Bracket> brackets = one.limits().getOrDefault(limit, List.of());
    if (brackets.isEmpty() && one.first()) {
      faults.add(
          fault(
              one,
              "there is no bracket for the limit " + limit,
              "write limits: {" + limit + ": {field: …, under: …, at: …, over: …}}"));
    }
    for (RuleCase.Bracket bracket : brackets) {
      List<Assessment> sides = new ArrayList<>();
      for (String value : bracket.values()) {
        sides.add(one.with(bracket.changes(value)));
      }
      List<Boolean> outcomes = outcomes(advisor, one, sides);
      Assessment at = sides.get(bracket.values().indexOf(bracket.at()));
      Limit held = advisor.sheet(at, one.foot()).limits().get(limit);
      if (held == null) {
        faults.add(fault(one, limit + " does not hold for the foot", "write with: […] first"));
      } else if (outcomes.stream().distinct().count() < 2) {
        faults.add(
            fault(
                one,
                "under, at and over " + limit + " the rule does the same",
                "bring the field to either side of " + FactNames.number(held.value())));
      } else {
        for (double step : new double[] {held.step(), -held.step()}) {
          if (outcomes(moved(held, step), one, sides).equals(outcomes)) {
            faults.add(
                fault(
                    one,
                    "moving "
                        + limit
                        + " one step "
                        + (step > 0 ? "up" : "down")
                        + " changes nothing under, at or over it",
                    "bring the field nearer to " + FactNames.number(held.value())));
          }
        }
      }
    }
  }

  private Advisor moved(Limit limit, double by) {
    List<Limit> limits = new ArrayList<>(book.limits());
    limits.replaceAll(other -> other == limit ? limit.withValue(limit.value() + by) : other);
    return new Advisor(rules.under(book.withLimits(limits)));
  }

  /** On which of these the rule fires. */
  private static List<Boolean> outcomes(Advisor advisor, RuleCase one, List<Assessment> sides) {
    return sides.stream().map(side -> firing(advisor, one, side) != null).toList();
  }

  private boolean fires(RuleCase one, String... changes) throws IOException, RuleCase.Unusable {
    return firing(advisor, one, one.with(changes)) != null;
  }

  /** The firing of the rule of a case on its foot of this assessment; null where it is silent. */
  static FiredRule firing(Advisor advisor, RuleCase one, Assessment assessment) {
    return advisor.firings(assessment).get(one.foot()).stream()
        .filter(firing -> firing.rule().equals(one.rule()))
        .findFirst()
        .orElse(null);
  }

  private static RuleFault fault(RuleCase one, String says, String cure) {
    return new RuleFault(CaseLibrary.shown(one.file()), 0, one.rule(), says, cure);
  }
}
