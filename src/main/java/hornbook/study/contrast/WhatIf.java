package hornbook.study.contrast;

import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.advice.outcome.Outcome;
import hornbook.advice.outcome.RuleTable;
import hornbook.assessment.Assessment;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One foot, and what would be advised were this or that otherwise. For use by one thread. */
final class WhatIf {
  private static final int MOST_REMEMBERED = 10_000;

  private final Advisor advisor;
  private final RuleTable table;
  private final Assessment noted;
  private final int foot;
  private final BitSet met;
  private final Outcome standing;

  /** By the rules that fire. */
  private final Map<BitSet, List<OutcomeChange>> remembered = new HashMap<>();

  WhatIf(Advisor advisor, RuleTable table, Assessment noted, FootAdvice advice) {
    this.advisor = advisor;
    this.table = table;
    this.noted = noted;
    this.foot = advice.index();
    this.met = table.met(advice.sheet());
    this.standing = Outcome.of(advice);
  }

  Assessment noted() {
    return noted;
  }

  /** The conditions of the rules that the foot meets as noted. */
  BitSet met() {
    return met;
  }

  /** The conditions it meets with something changed. */
  BitSet met(Assessment changed) {
    return table.met(advisor.sheet(changed, foot));
  }

  /** The conditions it meets with all these steps made, worked out anew. */
  BitSet met(List<SingleChange> steps) {
    Assessment changed = noted;
    for (SingleChange step : steps) {
      changed = step.on(changed);
    }
    return met(changed);
  }

  /** The rules that keep a technique or support from use on a foot that meets these. */
  BitSet barring(BitSet met, String subject) {
    return table.barring(met, subject);
  }

  /** Whether nothing keeps it from use and some reason supports it; quickly seen. */
  boolean mayBeUsed(BitSet met, String subject) {
    return barring(met, subject).isEmpty() && table.spokenFor(met, subject);
  }

  /** What would differ from the advice on what was noted, on a foot that meets these. */
  List<OutcomeChange> turns(BitSet other) {
    BitSet fired = table.fired(other);
    List<OutcomeChange> known = remembered.get(fired);
    if (known != null) {
      return known;
    }
    Outcome then = table.standing(fired, noted.visit().vet());
    List<OutcomeChange> turns = List.copyOf(OutcomeChange.between(standing, then));
    if (remembered.size() < MOST_REMEMBERED) {
      remembered.put(fired, turns);
    }
    return turns;
  }
}
