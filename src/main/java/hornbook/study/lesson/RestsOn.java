package hornbook.study.lesson;

import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.condition.ConditionState;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import hornbook.study.critique.Evidence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a rule rests on, through the findings of other rules down to the assessment. */
public final class RestsOn {
  private RestsOn() {}

  /** The facts, each once; findings are followed to what they were made from. */
  public static List<CitedFact> facts(Evidence evidence, FootAdvice foot) {
    Set<CitedFact> facts = new LinkedHashSet<>();
    List<CitedFact> open = new ArrayList<>(evidence.because());
    if (!evidence.fired()) {
      evidence.silent().conditions().forEach(state -> open.addAll(state.cited()));
    }
    while (!open.isEmpty()) {
      CitedFact fact = open.remove(0);
      if (facts.add(fact) && fact instanceof Finding finding) {
        foot.findings().stream()
            .filter(one -> one.id().equals(finding.what()))
            .map(FindingGiven::because)
            .forEach(open::addAll);
      }
    }
    facts.removeIf(Finding.class::isInstance);
    return List.copyOf(facts);
  }

  /** The limits it is compared with. */
  public static List<Limit> limits(Evidence evidence, FootAdvice foot) {
    return facts(evidence, foot).stream()
        .filter(Limit.class::isInstance)
        .map(Limit.class::cast)
        .toList();
  }

  /** The fields, by their paths; where a rule is silent, also what was not looked at. */
  public static List<String> paths(Evidence evidence, FootAdvice foot) {
    Set<String> paths = new LinkedHashSet<>();
    facts(evidence, foot).forEach(fact -> add(fact, paths));
    if (!evidence.fired()) {
      for (ConditionState state : evidence.silent().conditions()) {
        paths.addAll(state.unseen());
      }
    }
    return List.copyOf(paths);
  }

  private static void add(CitedFact fact, Set<String> to) {
    if (fact instanceof Reading reading) {
      to.addAll(reading.fields());
    } else if (fact instanceof Seen seen) {
      to.add(seen.field());
    } else if (fact instanceof Crack crack) {
      to.add(crack.field().replaceFirst("\\[\\d+]$", ""));
    } else if (fact instanceof Stretch stretch) {
      to.add(stretch.field().replaceFirst("\\[\\d+]$", ""));
    }
  }
}
