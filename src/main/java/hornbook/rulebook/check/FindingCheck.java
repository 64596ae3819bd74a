package hornbook.rulebook.check;

import hornbook.rulebook.Condition;
import hornbook.rulebook.FindingKind;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.file.FaultCollector;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Whether every finding is made, rests on something other than itself, and can be answered. */
final class FindingCheck {
  private final Rulebook book;
  private final FaultCollector faults;
  private final Map<String, Set<String>> needs = new TreeMap<>();
  private final Set<String> made = new HashSet<>();
  private final Set<String> answered = new HashSet<>();

  FindingCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
    for (RuleEntry rule : book.rules().values()) {
      Set<String> builtOn = new TreeSet<>();
      for (Condition condition : rule.conditions()) {
        if (condition instanceof Condition.OfFinding finding) {
          builtOn.add(finding.what());
        }
      }
      if (rule.outcome() instanceof RuleConclusion.Finds finds) {
        made.add(finds.finding());
        needs.computeIfAbsent(finds.finding(), key -> new TreeSet<>()).addAll(builtOn);
      } else if (speaksForTechnique(rule.outcome())) {
        answered.addAll(builtOn);
      }
    }
  }

  private boolean speaksForTechnique(RuleConclusion outcome) {
    return outcome instanceof RuleConclusion.Reasons reasons
        && reasons.bearing() == Bearing.FOR
        && reasons.subjects().stream().anyMatch(subject -> book.technique(subject) != null);
  }

  void check() {
    for (FindingKind finding : book.findings().values()) {
      if (!faults.whole()) {
        continue;
      }
      if (!made.contains(finding.id())) {
        faults.at(
            finding,
            finding.id(),
            "no rule makes this finding",
            "write the rule, or take the finding out");
      } else if (finding.defect() && !answered.contains(finding.id())) {
        faults.at(
            finding,
            finding.id(),
            "no technique deals with this defect, so a foot with it never has a first choice",
            "write a rule with a reason for a technique because of it, or say defect: false");
      }
    }
    book.findings().values().forEach(this::excludes);
    cycles();
  }

  private void excludes(FindingKind finding) {
    for (String other : finding.excludes()) {
      if (!book.findings().containsKey(other) || other.equals(finding.id())) {
        faults.at(
            finding,
            finding.id(),
            "it cannot exclude " + other + ": there is no such other finding",
            FaultCollector.nearest("name a finding", other, book.findings().keySet()));
      }
    }
  }

  /** A finding that rests on itself would never be settled. */
  private void cycles() {
    for (String start : needs.keySet()) {
      if (book.findings().containsKey(start) && reaches(start, start, new HashSet<>())) {
        faults.at(
            book.findings().get(start), start, "the finding rests on itself", "break the circle");
      }
    }
  }

  private boolean reaches(String from, String goal, Set<String> seen) {
    for (String next : needs.getOrDefault(from, Set.of())) {
      if (next.equals(goal) || (seen.add(next) && reaches(next, goal, seen))) {
        return true;
      }
    }
    return false;
  }
}
